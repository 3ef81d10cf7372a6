namespace Orlop.Review.Practices;

/// <summary>A limit of a practice: its value, where it is from, and whether the source was seen.</summary>
/// <param name="Id">In the closed list of <see cref="LimitIds"/>.</param>
/// <param name="Value">In the unit its id ends with.</param>
/// <param name="Source">Document and clause, or "common practice, no source", or the owner's reason.</param>
/// <param name="IsFromMemory">The source was not seen when the value was written down.</param>
public sealed record Limit(string Id, double Value, string Source, bool IsFromMemory);

/// <summary>The limits a practice must give, and those that only an owner sets. The last word of an id is its unit.</summary>
public static class LimitIds
{
    /// <summary>Voltage that may be lost on the way to a critical load, over nominal.</summary>
    public const string CriticalDropFraction = "critical-drop-fraction";

    /// <summary>Voltage that may be lost on the way to any other load, over nominal.</summary>
    public const string GeneralDropFraction = "general-drop-fraction";

    /// <summary>Least voltage at a load that does not give its own, over nominal.</summary>
    public const string LeastVoltageFraction = "least-voltage-fraction";

    /// <summary>Greatest voltage at a load, over nominal.</summary>
    public const string GreatestVoltageFraction = "greatest-voltage-fraction";

    /// <summary>Device rating over conductor ampacity, below 50 V.</summary>
    public const string DeviceOverAmpacityBelow50VRatio = "device-over-ampacity-below-50v-ratio";

    /// <summary>Device rating over conductor ampacity, from 50 V up.</summary>
    public const string DeviceOverAmpacityFrom50VRatio = "device-over-ampacity-from-50v-ratio";

    /// <summary>The ampacity in the two ratios above is reckoned after derating (1) or straight from the table (0).</summary>
    public const string DeviceUsesDeratedAmpacityFlag = "device-uses-derated-ampacity-flag";

    /// <summary>Unprotected length of a bare run from any source.</summary>
    public const string UnprotectedM = "unprotected-m";

    /// <summary>Unprotected length of a run in a sheath or enclosure.</summary>
    public const string UnprotectedSheathedM = "unprotected-sheathed-m";

    /// <summary>Unprotected length from a battery post.</summary>
    public const string UnprotectedFromBatteryM = "unprotected-from-battery-m";

    /// <summary>Continuous load over device rating.</summary>
    public const string LoadOverDeviceFraction = "load-over-device-fraction";

    /// <summary>Ambient of the ampacity table.</summary>
    public const string TableAmbientC = "table-ambient-c";

    /// <summary>Least ambient to reckon with in an engine space while the engine runs.</summary>
    public const string EngineSpaceC = "engine-space-c";

    /// <summary>Voltage from which the grouping factor applies.</summary>
    public const string GroupingFromV = "grouping-from-v";

    /// <summary>Smallest power conductor.</summary>
    public const string SmallestConductorMm2 = "smallest-conductor-mm2";

    /// <summary>Smallest conductor inside a sheath of more than one core.</summary>
    public const string SmallestSheathedConductorMm2 = "smallest-sheathed-conductor-mm2";

    /// <summary>Rings on one stud.</summary>
    public const string RingsPerStudCount = "rings-per-stud-count";

    /// <summary>What a string may give over its fair share of the current of strings side by side.</summary>
    public const string StringOverShareFraction = "string-over-share-fraction";

    /// <summary>Difference between the capacities of batteries in one bank, over the greater.</summary>
    public const string StringCapacityFraction = "string-capacity-fraction";

    /// <summary>Days between the first and the last battery of a bank going into use.</summary>
    public const string StringAgeCount = "string-age-count";

    /// <summary>Difference of voltage at which two strings may be joined.</summary>
    public const string StringJoinV = "string-join-v";

    /// <summary>Residual current at which the device ahead of AC outlets must open.</summary>
    public const string ResidualA = "residual-a";

    /// <summary>Share of a conduit's inside that one cable may take.</summary>
    public const string ConduitFillOneFraction = "conduit-fill-one-fraction";

    /// <summary>Share of a conduit's inside that two cables may take.</summary>
    public const string ConduitFillTwoFraction = "conduit-fill-two-fraction";

    /// <summary>Share of a conduit's inside that three cables and more may take.</summary>
    public const string ConduitFillMoreFraction = "conduit-fill-more-fraction";

    /// <summary>Share of the inside of a short conduit that any number of cables may take.</summary>
    public const string ConduitFillShortFraction = "conduit-fill-short-fraction";

    /// <summary>Least radius of a bend over the outer diameter of the cable.</summary>
    public const string BendOverDiameterRatio = "bend-over-diameter-ratio";

    /// <summary>Greatest distance between the supports of a cable.</summary>
    public const string SupportSpacingM = "support-spacing-m";

    /// <summary>Greatest list at rest.</summary>
    public const string MostListDeg = "most-list-deg";

    /// <summary>Greatest heel while a weight hangs from a hook.</summary>
    public const string MostLiftingHeelDeg = "most-lifting-heel-deg";

    /// <summary>Greatest trim at rest, by the stern or by the head.</summary>
    public const string MostTrimDeg = "most-trim-deg";

    /// <summary>Least height of deck edge and openings over the water at rest.</summary>
    public const string LeastFreeboardM = "least-freeboard-m";

    /// <summary>Least height of deck edge and openings over the water with one space flooded.</summary>
    public const string LeastFloodedFreeboardM = "least-flooded-freeboard-m";

    /// <summary>Least GM at rest, free surfaces taken off.</summary>
    public const string LeastGmM = "least-gm-m";

    /// <summary>Longest natural roll period: a boat that rolls slower is tender.</summary>
    public const string LongestRollPeriodS = "longest-roll-period-s";

    /// <summary>Shortest natural roll period: a boat that rolls quicker is hard on people and gear.</summary>
    public const string ShortestRollPeriodS = "shortest-roll-period-s";

    /// <summary>Those that every practice gives, for validation of practice files.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        CriticalDropFraction, GeneralDropFraction, LeastVoltageFraction, GreatestVoltageFraction, DeviceOverAmpacityBelow50VRatio,
        DeviceOverAmpacityFrom50VRatio, DeviceUsesDeratedAmpacityFlag, UnprotectedM, UnprotectedSheathedM, UnprotectedFromBatteryM, LoadOverDeviceFraction, TableAmbientC,
        EngineSpaceC, GroupingFromV, SmallestConductorMm2, SmallestSheathedConductorMm2, RingsPerStudCount, StringOverShareFraction, StringCapacityFraction, StringAgeCount, StringJoinV, ResidualA,
        ConduitFillOneFraction, ConduitFillTwoFraction, ConduitFillMoreFraction, ConduitFillShortFraction, BendOverDiameterRatio, SupportSpacingM,
    ];

    /// <summary>Those that no practice gives and an owner may set: where one is not set, nothing is held against it.</summary>
    public static IReadOnlyList<string> OwnersOnly { get; } = [MostListDeg, MostLiftingHeelDeg, MostTrimDeg, LeastFreeboardM, LeastFloodedFreeboardM, LeastGmM, LongestRollPeriodS, ShortestRollPeriodS];
}
