using Orlop.Hull.Measuring;

namespace Orlop.Review.Stability;

/// <summary>An inclining test, as read: of the boat as she was inclined.</summary>
/// <param name="Input">Readings and displacement as the engine took them.</param>
/// <param name="Fit">The line through the readings, GM among it.</param>
/// <param name="KmM">Height of the metacentre above the base line then.</param>
/// <param name="FreeSurfaceM">What slack tanks took from GM then: KG is that of the liquids at rest.</param>
/// <param name="KgM">KG as inclined: KM less GM less the loss by free surfaces.</param>
/// <param name="KgDeviationM">One standard deviation of that KG, from the slope and from the displacement; errors of the form are not in it.</param>
public sealed record InclinationFound(InclinationInput Input, InclinationResult Fit, double KmM, double FreeSurfaceM, double KgM, double KgDeviationM);
