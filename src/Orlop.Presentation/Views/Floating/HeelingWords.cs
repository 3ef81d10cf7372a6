using System.Globalization;
using Orlop.Presentation.Quantities;
using Orlop.Review.Stability;

namespace Orlop.Presentation.Views.Floating;

/// <summary>What heels a boat, in the words of a chart.</summary>
public static class HeelingWords
{
    /// <summary>What its curve is called.</summary>
    public static string Curve(HeelingLever lever)
    {
        ArgumentNullException.ThrowIfNull(lever);
        return lever.Cause switch
        {
            HeelingCause.SteadyWind => "Lever of the steady wind",
            HeelingCause.Gust => "Lever of the gust",
            HeelingCause.People => $"Lever of {lever.Subject} people at the side",
            _ => $"GZ once {lever.Subject} is let go",
        };
    }

    /// <summary>"steady wind heels to 7.3°"; the lever meets at a heel.</summary>
    public static string Meets(HeelingLever lever, DisplayUnits units, CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(lever);
        string who = lever.Cause switch
        {
            HeelingCause.SteadyWind => "steady wind",
            HeelingCause.Gust => "gust",
            HeelingCause.People => $"{lever.Subject} people",
            _ => lever.Subject,
        };
        return $"{who} to {FloatingWords.Degrees(lever.MeetsDeg ?? double.NaN, units, culture)}";
    }
}
