using Orlop.Review.Findings;

namespace Orlop.Presentation.Views;

/// <summary>What an alteration brings that is asked about before it is accepted.</summary>
public static class TroubleWords
{
    /// <summary>How many findings are new trouble, fail by more than before, or cannot be told: "3 new troubles, 1 of which fails, 1 that fails by more than before and 2 that cannot be told"; null where there is none of these.</summary>
    public static string? Of(IEnumerable<PairedFinding> findings)
    {
        PairedFinding[] all = [.. findings];
        int troubles = all.Count(pair => pair.Change == Change.NewTrouble), failing = all.Count(pair => pair is { Change: Change.NewTrouble, Shown.Verdict: Verdict.Fails });
        int worse = all.Count(pair => pair is { Change: Change.Worse, Shown.Verdict: Verdict.Fails }), unknown = all.Count(pair => pair.Change == Change.Unknown);
        string[] said =
        [
            .. If(troubles, $"{(troubles == 1 ? "1 new trouble" : $"{troubles} new troubles")}{Failing(failing, troubles)}"),
            .. If(worse, $"{worse} that {(worse == 1 ? "fails" : "fail")} by more than before"),
            .. If(unknown, $"{unknown} that cannot be told"),
        ];
        return said.Length == 0 ? null : said.Length == 1 ? said[0] : $"{string.Join(", ", said[..^1])}{(failing > 0 ? ", and " : " and ")}{said[^1]}";
    }

    private static string[] If(int count, string words) => count == 0 ? [] : [words];

    private static string Failing(int failing, int troubles) => failing == 0 ? ""
        : failing == troubles ? troubles == 1 ? ", which fails" : ", which fail"
        : $", {failing} of which {(failing == 1 ? "fails" : "fail")}";
}
