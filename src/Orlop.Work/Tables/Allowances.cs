using System.Collections.Frozen;
using Orlop.Review.Mending;
using Orlop.Review.Ways;

namespace Orlop.Work.Tables;

/// <summary>What is allowed for beyond the bare need, as named data with its source.</summary>
public static class Allowances
{
    private static readonly WorkTable Table = WorkTable.Read("allowances.csv");
    private static readonly FrozenDictionary<string, double> Values = Table.Rows.ToFrozenDictionary(row => row[0], row => WorkTable.Number(row[1]), StringComparer.Ordinal);

    /// <summary>Where they come from.</summary>
    public static string Source => Table.Source;

    /// <summary>Cut lengths are rounded up to this, in metres.</summary>
    public static double CutStepM => Values["cut-step"];

    /// <summary>What a cable is cut longer than its run, by the owner's rules of runs.</summary>
    public static CutAllowance Cut(RouteRules rules)
    {
        ArgumentNullException.ThrowIfNull(rules);
        return new CutAllowance(rules.TailM, rules.LoopM, CutStepM);
    }

    /// <summary>A remainder of a reel as long as this is kept, in metres.</summary>
    public static double UsefulOffcutM => Values["useful-offcut"];

    /// <summary>Between supports of a cable, in metres.</summary>
    public static double ClipSpacingM => Values["clip-spacing"];

    /// <summary>Heat-shrink over each crimped end, in metres.</summary>
    public static double SleeveM => Values["sleeve-length"];

    /// <summary>Spare pieces for each kind of termination.</summary>
    public static int SpareTerminationCount => (int)Values["spare-terminations"];

    /// <summary>Spare pieces for each rating of fuse.</summary>
    public static int SpareFuseCount => (int)Values["spare-fuses"];

    /// <summary>Cable ties for each metre of run.</summary>
    public static double TiesPerMetreCount => Values["ties-per-metre"];

    /// <summary>Screws or bolts that hold a thing that is fitted.</summary>
    public static int FixingsEachCount => (int)Values["fixings-each"];

    /// <summary>From this on a thing is bolted and not screwed, in kilograms.</summary>
    public static double BoltedFromKg => Values["bolted-from"];

    /// <summary>What lifting gear that is fitted is tried with, as a multiple of what it is to lift; the maker's, a surveyor's and local rules go first.</summary>
    public static double TrialLoadFactor => Values["trial-load"];

    /// <summary>A weight that hangs no further than this from lifting gear, seen from above, hangs from it, in metres.</summary>
    public static double HookReachM => Values["hook-reach"];

    /// <summary>Above this a lift is planned, in kilograms.</summary>
    public static double LiftAloneKg => Values["lift-alone"];

    /// <summary>Above this nobody lifts by hand, however many they are: lifting gear marked for the load, in kilograms.</summary>
    public static double LiftTogetherKg => Values["lift-together"];
}
