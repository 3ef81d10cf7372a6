namespace Orlop.Work.Steps;

/// <summary>What a step is, in the order of a visit.</summary>
public enum StepKind { Weigh, Isolate, ProveDead, Remove, Fit, Run, MakeOff, TestFree, Connect, Confirm, Label, Test, Energise, Commission, HandOver }
