namespace Orlop.Presentation.Quantities;

/// <summary>The units a person reads and types.</summary>
public enum DisplayUnits { Metric, Us }
