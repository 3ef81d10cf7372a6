using System.Globalization;
using Orlop.Presentation.Quantities;

namespace Orlop.App.Shell;

/// <summary>Who reads the pages: their units and how they write numbers.</summary>
/// <param name="Units">Units to show.</param>
/// <param name="Culture">How numbers are written.</param>
/// <param name="Choose">Takes other units.</param>
public sealed record Reader(DisplayUnits Units, CultureInfo Culture, Action<DisplayUnits> Choose);
