using Orlop.App.Sessions;
using Orlop.App.Shell;
using Orlop.Boat.Things;
using Orlop.Presentation.Words;
using Orlop.Review.Findings;
using Orlop.Review.Readings.Checks;
using Orlop.Work.Steps;

namespace Orlop.App.Parts;

/// <summary>What is said of readings outside what they should be, before work is closed over them.</summary>
internal static class OutsideReadings
{
    /// <summary>The question before a step is ticked, or parts are recorded as built: what is open, and the readings of the alteration that do not agree; null where there is neither.</summary>
    /// <param name="open">The question about open steps; null where none is open.</param>
    /// <param name="ask">What is asked where only readings stand in the way.</param>
    public static string? With(string? open, BoatSnapshot now, string alterationId, Reader reader, string ask)
    {
        string[] outside = [.. Of(now, alterationId).Select(finding => SentenceText.Of(finding.Headline, reader.Units, reader.Culture))];
        return outside.Length == 0 ? open : $"{(outside.Length == 1 ? "A reading is" : $"{outside.Length} readings are")} outside what it should be. {string.Join(". ", outside)}. {open ?? ask}";
    }

    /// <summary>A step is asked about: it makes things live, or closes the work.</summary>
    public static bool Concern(WorkStep step) => step.Kind is StepKind.Energise or StepKind.Commission or StepKind.HandOver;

    private static IEnumerable<Finding> Of(BoatSnapshot now, string alterationId) => (now.Review?.Findings ?? [])
        .Where(pair => pair.CheckId == ReadingAgreesCheck.Id && pair.After is not null && now.AsBuilt.Find<Reading>(pair.SubjectId)?.Alteration == alterationId)
        .Select(pair => pair.After!.Worst)
        .Where(finding => finding.Verdict == Verdict.Fails);
}
