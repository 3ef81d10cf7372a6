using Orlop.Boat.Things;
using Orlop.Boat.Values;

namespace Orlop.Boat.Validation;

/// <summary>The rules of what must agree inside one thing.</summary>
internal static class ThingRules
{
    private static readonly string[] MediaTypes = ["image/jpeg", "image/png", "image/webp"];

    /// <summary>Checks a thing of which every value could be made.</summary>
    public static void Check(Thing thing, Spot spot, ProblemList problems)
    {
        if (thing is Part part)
        {
            CheckStuds(part, spot.At("studs"), problems);
        }

        switch (thing)
        {
            case ElectricLoad { RunningW: not null, RunningA: not null }:
                problems.Add(spot.At("runningA"), "runningW and runningA", "one of them", "A load gives its running power or its running current, not both.");
                break;
            case BatteryBank bank:
                CheckOpenCircuit(bank.OpenCircuit, spot.At("openCircuit"), problems);
                break;
            case Cable cable:
                CheckCores(cable.Cores, spot.At("cores"), problems);
                CheckRun(cable.Run, spot.At("run"), problems);
                break;
            case Space space:
                CheckBox("space", space.From, space.To, spot, problems);
                break;
            case Tank tank:
                CheckBox("tank", tank.From, tank.To, spot, problems);
                break;
            case RollingTest rolling:
                CheckDecay(rolling.Decay, spot.At("decay"), problems);
                break;
            case Photograph photograph:
                CheckPhotograph(photograph, spot, problems);
                break;
            case Reading reading:
                CheckReading(reading, spot, problems);
                break;
            case Way way:
                CheckGlands(way.Holes, spot.At("holes"), problems);
                break;
        }
    }

    private static void CheckStuds(Part part, Spot spot, ProblemList problems)
    {
        HashSet<string> seen = new(StringComparer.Ordinal);
        for (int i = 0; i < part.Studs.Count; i++)
        {
            string terminal = part.Studs[i].Terminal;
            if (!part.TerminalNames.Contains(terminal))
            {
                problems.Add(spot.At(i).At("terminal"), $"'{terminal}'", string.Join(", ", part.TerminalNames), "The part has no such terminal.");
            }
            else if (!seen.Add(terminal))
            {
                problems.Add(spot.At(i).At("terminal"), $"'{terminal}' again", "each terminal once", "Two studs are of one terminal.");
            }
        }
    }

    private static void CheckGlands(ValueList<WayHole> holes, Spot spot, ProblemList problems)
    {
        for (int i = 0; i < holes.Count; i++)
        {
            if (holes[i] is { LeastClampedMm: { } least, BoreMm: { } bore } && !(least.Value <= bore.Value))
            {
                problems.Add(spot.At(i).At("leastClampedMm"), FormattableString.Invariant($"{least.Value} mm"), FormattableString.Invariant($"at most {bore.Value} mm"), "A gland closes on no cable that is thicker than it takes.");
            }
        }
    }

    private static void CheckOpenCircuit(ValueList<ChargePoint> points, Spot spot, ProblemList problems)
    {
        if (points.Count == 1)
        {
            problems.Add(spot, "one point", "none, or two and more", "One point is no curve.");
        }

        for (int i = 1; i < points.Count; i++)
        {
            if (!(points[i].ChargeFraction > points[i - 1].ChargeFraction))
            {
                problems.Add(spot.At(i).At("chargeFraction"), FormattableString.Invariant($"{points[i].ChargeFraction}"), FormattableString.Invariant($"above {points[i - 1].ChargeFraction}"), "The points go from empty to full.");
            }

            if (!(points[i].OpenCircuitV >= points[i - 1].OpenCircuitV))
            {
                problems.Add(spot.At(i).At("openCircuitV"), FormattableString.Invariant($"{points[i].OpenCircuitV} V"), FormattableString.Invariant($"at least {points[i - 1].OpenCircuitV} V"), "The voltage of a battery never falls as it fills.");
            }
        }
    }

    private static void CheckCores(ValueList<Core> cores, Spot spot, ProblemList problems)
    {
        HashSet<string> seen = new(StringComparer.Ordinal);
        for (int i = 0; i < cores.Count; i++)
        {
            if (!seen.Add(cores[i].Id))
            {
                problems.Add(spot.At(i).At("id"), $"'{cores[i].Id}' again", "an id of its own in the cable", "Two cores of the cable have the same id.");
            }
        }
    }

    private static void CheckRun(ValueList<RunLeg> run, Spot spot, ProblemList problems)
    {
        for (int i = 0; i < run.Count; i++)
        {
            if (run[i] is { Way: not null, Space: not null })
            {
                problems.Add(spot.At(i).At("space"), "way and space", "at most one of them", "A stretch of a run follows a way or lies loose in a space, not both.");
            }
        }
    }

    private static void CheckDecay(ValueList<RollExtreme> decay, Spot spot, ProblemList problems)
    {
        for (int i = 1; i < decay.Count; i++)
        {
            if (!(decay[i].TimeS > decay[i - 1].TimeS))
            {
                problems.Add(spot.At(i).At("timeS"), FormattableString.Invariant($"{decay[i].TimeS} s"), FormattableString.Invariant($"above {decay[i - 1].TimeS} s"), "The extremes of a roll stand in the order of time.");
            }
        }
    }

    private static void CheckBox(string kind, Place first, Place second, Spot spot, ProblemList problems)
    {
        foreach ((string axis, double from, double to) in new[] { ("xM", first.XM, second.XM), ("yM", first.YM, second.YM), ("zM", first.ZM, second.ZM) })
        {
            if (!(from < to))
            {
                problems.Add(spot.At("to").At(axis), FormattableString.Invariant($"{to} m"), FormattableString.Invariant($"above {from} m, the other corner's"), $"The box of the {kind} is inside out.");
            }
        }
    }

    private static void CheckPhotograph(Photograph photograph, Spot spot, ProblemList problems)
    {
        if (photograph.Sha256.Length != 64 || photograph.Sha256.Any(letter => !char.IsAsciiHexDigitLower(letter)))
        {
            problems.Add(spot.At("sha256"), $"{photograph.Sha256.Length} letters", "64 small hexadecimal letters", "This is not a SHA-256.");
        }

        if (!MediaTypes.Contains(photograph.MediaType))
        {
            problems.Add(spot.At("mediaType"), $"'{photograph.MediaType}'", string.Join(", ", MediaTypes), "This kind of picture is not kept.");
        }
    }

    private static void CheckReading(Reading reading, Spot spot, ProblemList problems)
    {
        if (reading.VoltageV is null == reading.CurrentA is null)
        {
            problems.Add(spot, reading.VoltageV is null ? "neither voltageV nor currentA" : "voltageV and currentA", "one of them", "A reading is one voltage or one current.");
        }
        else if (reading.VoltageV is not null && (reading.Plus is null || reading.Minus is null || reading.Through is not null))
        {
            problems.Add(spot, "a voltage without two probes, or with an element", "voltageV with plus and minus, without through", "A voltage is read between two probes.");
        }
        else if (reading.CurrentA is not null && (reading.Through is null || reading.Plus is not null || reading.Minus is not null))
        {
            problems.Add(spot, "a current without an element, or with probes", "currentA with through, without plus and minus", "A current is read in one element.");
        }
    }
}
