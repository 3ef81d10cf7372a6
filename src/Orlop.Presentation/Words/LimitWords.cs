using System.Collections.Frozen;
using Orlop.Review.Practices;

namespace Orlop.Presentation.Words;

/// <summary>What the limits of a practice are called where people choose them.</summary>
public static class LimitWords
{
    private static readonly FrozenDictionary<string, string> Titles = new Dictionary<string, string>
    {
        [LimitIds.MostListDeg] = "Greatest list at rest",
        [LimitIds.MostLiftingHeelDeg] = "Greatest heel while lifting",
        [LimitIds.MostTrimDeg] = "Greatest trim at rest",
        [LimitIds.LeastFreeboardM] = "Least freeboard at rest",
        [LimitIds.LeastFloodedFreeboardM] = "Least freeboard with one space flooded",
        [LimitIds.LeastGmM] = "Least GM at rest",
        [LimitIds.LongestRollPeriodS] = "Longest roll period",
        [LimitIds.ShortestRollPeriodS] = "Shortest roll period",
        [LimitIds.CriticalDropFraction] = "Voltage lost on the way to a critical load, over nominal",
        [LimitIds.GeneralDropFraction] = "Voltage lost on the way to any other load, over nominal",
        [LimitIds.LeastVoltageFraction] = "Least voltage at a load that does not give its own, over nominal",
        [LimitIds.GreatestVoltageFraction] = "Greatest voltage at a load, over nominal",
        [LimitIds.DeviceOverAmpacityBelow50VRatio] = "Device rating over what its conductor carries, below 50 V",
        [LimitIds.DeviceOverAmpacityFrom50VRatio] = "Device rating over what its conductor carries, from 50 V",
        [LimitIds.DeviceUsesDeratedAmpacityFlag] = "What the conductor carries there: 1 after derating, 0 as in the table",
        [LimitIds.UnprotectedM] = "Unprotected length of a bare run",
        [LimitIds.UnprotectedSheathedM] = "Unprotected length in a sheath or enclosure",
        [LimitIds.UnprotectedFromBatteryM] = "Unprotected length from a battery post",
        [LimitIds.LoadOverDeviceFraction] = "Continuous load over device rating",
        [LimitIds.EngineSpaceC] = "Least temperature to reckon with in an engine space while the engine runs",
        [LimitIds.GroupingFromV] = "Voltage from which cables together carry less",
        [LimitIds.SmallestConductorMm2] = "Smallest power conductor",
        [LimitIds.SmallestSheathedConductorMm2] = "Smallest conductor in a sheath of several",
        [LimitIds.RingsPerStudCount] = "Rings on one stud",
        [LimitIds.StringOverShareFraction] = "What a string may give over its fair share",
        [LimitIds.StringCapacityFraction] = "Difference between the capacities in one bank, over the greater",
        [LimitIds.StringAgeCount] = "Days between the first and the last battery of a bank",
        [LimitIds.StringJoinV] = "Difference of voltage at which strings may be joined",
        [LimitIds.ResidualA] = "Residual current ahead of AC outlets",
        [LimitIds.ConduitFillOneFraction] = "Share of a conduit that one cable may take",
        [LimitIds.ConduitFillTwoFraction] = "Share of a conduit that two cables may take",
        [LimitIds.ConduitFillMoreFraction] = "Share of a conduit that three cables and more may take",
        [LimitIds.ConduitFillShortFraction] = "Share of a short conduit that any number may take",
        [LimitIds.BendOverDiameterRatio] = "Least radius of a bend over the cable's diameter",
        [LimitIds.SupportSpacingM] = "Greatest distance between the supports of a cable",
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>The limits that an owner may set, those that no practice gives first. The ambient of the ampacity table belongs to its table.</summary>
    public static IReadOnlyList<string> Choosable { get; } = [.. LimitIds.OwnersOnly, .. LimitIds.All.Where(id => id != LimitIds.TableAmbientC)];

    /// <summary>"Greatest heel while lifting"; the id itself where it is no limit.</summary>
    public static string Of(string id) => Titles.GetValueOrDefault(id, id);
}
