namespace Orlop.Work.Steps;

/// <summary>What a caution is about.</summary>
public enum CautionKind { Battery, Mains, StoredCharge, HotSurface, Drilling, HotWork, Lifting, StaysLive, NotDead, Running, Stability }

/// <summary>A caution that stands where its risk is.</summary>
public sealed record Caution(CautionKind Kind, string Text);
