using System.Globalization;
using Orlop.Boat;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Orlop.Hull.Floating;
using Orlop.Presentation.Quantities;
using Orlop.Presentation.Words;
using Orlop.Review.Findings;
using Orlop.Review.Stability;

namespace Orlop.Presentation.Views.Floating;

/// <summary>Floating position and stability in plain words.</summary>
public static class FloatingWords
{
    /// <summary>Stands wherever stability is shown.</summary>
    public const string Caution =
        "Stability at sea is a matter of life. These numbers rest on the form and the weights as typed, for still water; they replace no survey, no inclining test and no licensed naval architect, and local rules come first.";

    /// <summary>Standard deviations that ± stands for wherever people read it.</summary>
    public const double BandFactor = 2;

    /// <summary>Stands for a number that a capsized boat has not.</summary>
    public const string None = "none";

    /// <summary>Stands for a number that a boat has not into which water comes where she rests.</summary>
    public const string Filling = "fills";

    private const double LeastHeelDeg = 0.05;
    private const double LeastDensityKgPerM3 = 1;
    private const double FarFromUprightDeg = 1;
    private const double LeastTrimM = 0.0005;

    /// <summary>Why there is no floating position, or what is wrong with it and which berth tests do not count or contradict each other; null where she floats dry and upright enough, and all count and agree.</summary>
    public static string? Trouble(StabilityView view, FloatingFacts facts, DisplayUnits units, CultureInfo culture)
    {
        string[] said = [.. new[] { OfRest(view, facts, units, culture) }.OfType<string>(), .. view.Weight.Contradiction is { } contradiction ? new[] { contradiction.Text } : [],
            .. view.Weight.Impossible is { } impossible ? new[] { $"{OutOfReach(view, impossible, units, culture)} Nothing that rests on her weight holds until it is put right." } : [], .. NotCounted(view)];
        return said.Length == 0 ? null : string.Join(" ", said);
    }

    /// <summary>"By Rolls in May the centre of gravity of the whole boat lies 1.01 m ± 0.4 m below the lowest point of her hull: did you count half rolls? A roll is there and back."</summary>
    private static string OutOfReach(StabilityView view, ImpossibleCentre impossible, DisplayUnits units, CultureInfo culture)
    {
        Thing? from = view.Boat.Find(impossible.FromIds[0]);
        string ask = from is RollingTest ? $": {ImpossibleCentre.HalfRolls}" : ", where no boat has it";
        return $"By {(from as BerthTest)?.Title ?? "the bare boat's own figures"} {SentenceText.Of(impossible.Said, units, culture)}{ask}.";
    }

    /// <summary>"nobody listed aboard", which every number of a condition goes by; empty where somebody is, or where she does not float.</summary>
    public static string Nobody(BoatModel boat, FloatingFacts facts)
    {
        ArgumentNullException.ThrowIfNull(facts);
        return facts.MassKg is not null && !facts.Loaded.Ledger.HasPeople(boat) ? "nobody listed aboard" : "";
    }

    /// <summary>What every number of stability takes for granted of the deck.</summary>
    public static string Deck(BoatModel boat, DisplayUnits units, CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(boat);
        string[] wells = [.. OpeningsGiven.WellsWithoutSides(boat).Select(well => well.Title)];
        return boat.Particulars?.Deck switch
        {
            DeckKind.Closed or DeckKind.PartlyOpen when wells.Length > 0 =>
                $"Length and breadth of {string.Join(" and ", wells)} are not given, so how far out its sides lie is not known: water is taken to come in where the deck edge first goes under, or at the height of the well there. A sea or a wash brings it in sooner.",
            DeckKind.Closed => "Taken as given: the deck is closed and watertight from edge to edge, and every opening not listed is shut. A cockpit or a well that fills is not: there she has less stability than these numbers say, or none.",
            DeckKind.Open => "She is open: water is taken to come in where the deck edge first goes under, and nothing beyond that heel is hers. A sea, a wash or people at the side bring water in sooner.",
            DeckKind.PartlyOpen when OpeningsGiven.IsOverEdge(boat) => "She is partly open, and no coaming of her well is listed among the openings: water is taken to come in where the deck edge first goes under. A sea or a wash brings it in sooner.",
            DeckKind.PartlyOpen => $"She is partly open: water is taken to come in over the coaming of the well that is listed, to both sides{Wells(boat, units, culture)}; the rest of the deck is taken as closed and watertight. A sea or a wash brings it in sooner.",
            _ => "Whether her deck is closed is not said. Levers are drawn as if it were, and where she floods is unknown: an open boat, a cockpit or a well that fills has less stability than these numbers say, or none.",
        };
    }

    // ", Well from 0.8 m to starboard to 0.8 m to port": where its sides are taken to lie, to be compared with the boat.
    private static string Wells(BoatModel boat, DisplayUnits units, CultureInfo culture)
    {
        string Side(double yM) => $"{Metres(Math.Abs(yM), units, culture)} to {(yM < 0 ? "starboard" : "port")}";
        return string.Concat(boat.All<HullOpening>()
            .Where(opening => opening is { Use: OpeningUse.Well, Place: not null, IsExtentTold: true })
            .Select(well => $", {well.Title} from {Side(well.Place!.YM - (well.ClearBreadthM!.Value / 2))} to {Side(well.Place.YM + (well.ClearBreadthM.Value / 2))}"));
    }

    /// <summary>The water that she floats in, and where that number is from; a survey in other water is named.</summary>
    public static string Water(StabilityView view, DisplayUnits units, CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(view);
        string Density(double kgPerM3) => QuantityText.Shown(kgPerM3, "KgPerM3", units, culture);
        Quantity? given = view.Boat.Particulars?.WaterDensityKgPerM3;
        string[] others =
        [
            .. view.Boat.All<BerthTest>().Where(test => test.WaterDensityKgPerM3 is { } measured && Math.Abs(measured.Value - view.WaterKgPerM3) >= LeastDensityKgPerM3)
                .Select(test => $"{test.Title} was made in {Density(test.WaterDensityKgPerM3!.Value)}"),
        ];
        return $"Water: {Density(view.WaterKgPerM3)}{(given is null ? ", taken as sea water: none is given" : $", {Wording.Of(given.Known)}")}{(others.Length == 0 ? "" : $"; {string.Join("; ", others)}")}.";
    }

    /// <summary>The warning of tanks that were slack at a rolling or an inclining test: which, what they took from GM, how much longer she rolled for it. Null where none was.</summary>
    /// <param name="gmM">GM as a rolling test read it; null for an inclining test.</param>
    public static string? Slack(SlackAtTest? slack, double? gmM, DisplayUnits units, CultureInfo culture)
    {
        if (slack is null)
        {
            return null;
        }

        string longer = gmM is { } gm && slack.LongerRatio(gm) is { } ratio ? string.Create(culture, $", and made each roll {100 * (ratio - 1):0.#} % longer") : "";
        string took = slack.LossM is { } loss ? $"their free surface took {Metres(loss, units, culture)} from GM{longer}; that is put back for KG" : "what their free surface took from GM cannot be told before her displacement is known";
        return $"Slack then: {slack.Names}. Taken as at rest on their level, {took}{(slack.HasUntold ? ", but for the tank of which the fill is not told" : "")}. Liquid that surges falsifies the test: press them up or empty them, and take it again.";
    }

    /// <summary>Each berth test that does not count, with why: "Inclining in May does not count: …".</summary>
    public static IEnumerable<string> NotCounted(StabilityView view)
    {
        ArgumentNullException.ThrowIfNull(view);
        return view.Weight.Trouble.Select(trouble => $"{view.Boat.Find(trouble.TestId)?.Title ?? trouble.TestId} does not count: {trouble.Message.TrimEnd('.')}.");
    }

    private static string? OfRest(StabilityView view, FloatingFacts facts, DisplayUnits units, CultureInfo culture) => facts.Floating?.Rest switch
    {
        null when view.Bodies.Problems is [var problem, ..] => $"The hull's lines make no closed surface: {problem}.",
        null when view.Bodies.Hull is null => "How she floats is unknown: the hull's lines are not given.",
        null when facts.Loaded.WithoutKg is not null => $"{(facts.Under is { } wet ? $"{OfUnder(wet, units, culture)} " : "")}Her stability is unknown: {WhyUnknown.NoKg}. Displacement, draughts and trim are those of the freeboards.",
        null => "How she floats is unknown: her own weight is not known. The bare boat's mass and centre tell it, or a freeboard survey together with an inclining or a rolling test.",
        { Status: FloatingStatus.Capsizes } => $"She capsizes: loaded like this she goes over {facts.CapsizedTo} and comes to rest more than 90° from upright.",
        { Status: FloatingStatus.Sinks or FloatingStatus.DoesNotFloat } => "She goes under: loaded like this she weighs more than all the water she can push aside.",
        { Status: FloatingStatus.NotConverged } => "No position of rest was found; nothing may be concluded.",
        { Position.IsLoll: true } => $"She is not stable upright: she lies over at this angle, to one side or the other.{(facts.Under is { } wet ? $" {OfUnder(wet, units, culture)}" : "")}",
        _ when facts.Under is { } under => OfUnder(under, units, culture),
        _ => null,
    };

    private static string OfUnder(UnderAtRest under, DisplayUnits units, CultureInfo culture)
    {
        string where = $"{under.Title} is {Metres(Math.Abs(under.UnderM), units, culture)} {(under.UnderM < 0 ? "over the water" : "under water")} {under.Spot}";
        string doubt = under.Doubt is null ? "" : $", and {under.Doubt}";
        return under.Fills ? $"She fills: {where}. None of these numbers is hers: they are those of a boat that no water comes into."
            : under.IsSurelyUnder ? $"Whether she floats dry is unknown: {where}{doubt}."
            : $"She may fill: {where}, {(double.IsFinite(under.HalfM) ? $"and that may be {Metres(under.HalfM, units, culture)} more or less, so unsure is her weight" : "and how sure that is cannot be told")}{doubt}.";
    }

    /// <summary>How grave that is.</summary>
    public static Verdict TroubleVerdict(FloatingFacts facts) => facts.Floating?.Rest switch
    {
        { Status: FloatingStatus.Capsizes or FloatingStatus.Sinks or FloatingStatus.DoesNotFloat } or { Position.IsLoll: true } => Verdict.Fails,
        _ when facts.Fills => Verdict.Fails,
        _ => Verdict.Unknown,
    };

    /// <summary>What stands for a number that is not told: "fills", "none" of a boat that capsizes, else "unknown".</summary>
    public static string NotTold(FloatingFacts facts)
    {
        ArgumentNullException.ThrowIfNull(facts);
        return facts.Fills ? Filling : facts.Capsizes ? None : QuantityText.Unknown;
    }

    /// <summary>"0.8° to port", "upright".</summary>
    public static string Heel(double heelDeg, DisplayUnits units, CultureInfo culture) => Math.Abs(heelDeg) < LeastHeelDeg
        ? "upright"
        : $"{Degrees(Math.Abs(heelDeg), units, culture)} to {(heelDeg > 0 ? "starboard" : "port")}";

    /// <summary>", at 13.2° to starboard": where she rests, for a number that holds only there; empty near upright.</summary>
    public static string At(double heelDeg, DisplayUnits units, CultureInfo culture) => Math.Abs(heelDeg) < FarFromUprightDeg ? "" : $", at {Heel(heelDeg, units, culture)}";

    /// <summary>"0.12 m by the stern", "level".</summary>
    public static string Trim(double trimM, DisplayUnits units, CultureInfo culture) => Math.Abs(trimM) < LeastTrimM
        ? "level"
        : $"{Metres(Math.Abs(trimM), units, culture)} by the {(trimM > 0 ? "stern" : "bow")}";

    /// <summary>"± 0.05 m", two standard deviations; what cannot be told is said.</summary>
    public static string Band(double deviation, string suffix, DisplayUnits units, CultureInfo culture) => double.IsFinite(deviation)
        ? $"±\u00A0{Half(deviation, suffix, units, culture)}"
        : "± not known";

    /// <summary>"0.05 m": two standard deviations, to two digits, as they stand in a column under ±.</summary>
    public static string Half(double deviation, string suffix, DisplayUnits units, CultureInfo culture) => QuantityText.Shown(TwoDigits(BandFactor * deviation), suffix, units, culture);

    /// <summary>Stability's range on the side where it is shorter: how far, what ends it, and how far it is to the other side.</summary>
    public static (string Value, string Of) Range(BoatModel boat, FloatingFacts facts, DisplayUnits units, CultureInfo culture)
    {
        ArgumentNullException.ThrowIfNull(facts);
        if (facts.Fills)
        {
            return (Filling, $"where she comes to rest: {facts.Under!.Title} is under water");
        }

        string SideOf(bool isPort) => isPort ? "to port" : "to starboard";
        if (facts is not { Port: { } port, Starboard: { } starboard } || facts.Capsizes)
        {
            return facts.Capsizes ? (None, $"she goes over {facts.CapsizedTo}") : (QuantityText.Unknown, "");
        }

        if (PastTheEdge(boat, facts, units, culture) is { } untold)
        {
            return untold;
        }

        bool isPort = facts.IsPortShorter;
        (RightingFeatures shorter, RightingFeatures other) = isPort ? (port, starboard) : (starboard, port);
        string how = RangeText.EndOf(boat, shorter, SideOf(isPort), units, culture);
        string flooding = OpeningsGiven.WhyNot(boat) is not { } why || shorter.LollDeg is null ? "" : $"; {why}";
        return (RangeText.LengthOf(shorter, units, culture), $"{how}; {RangeText.LengthOf(other, units, culture)} {SideOf(!isPort)}{flooding}");
    }

    // Nobody said whether her deck is closed: where the deck edge goes under before anything else ends her range, what lies beyond is not known.
    private static (string Value, string Of)? PastTheEdge(BoatModel boat, FloatingFacts facts, DisplayUnits units, CultureInfo culture)
    {
        (double EdgeDeg, string Side)[] sides =
        [
            .. new (double? Edge, RightingFeatures Features, string Side)[] { (facts.UntoldEdge?.StarboardDeg, facts.Starboard!, "to starboard"), (facts.UntoldEdge?.PortDeg, facts.Port!, "to port") }
                .Where(side => side.Edge is { } edge && side.Features.LollDeg is { } loll && edge < Math.Abs(loll) + RangeText.Deg(side.Features))
                .Select(side => (side.Edge!.Value, side.Side)).OrderBy(side => side.Value),
        ];
        return sides is [var (edge, side), ..] ? ($"unknown past {Degrees(edge, units, culture)}", $"{side} the deck edge goes under there; {OpeningsGiven.WhyNot(boat)}") : null;
    }

    /// <summary>A length to the millimetre.</summary>
    public static string Metres(double lengthM, DisplayUnits units, CultureInfo culture) => QuantityText.Shown(Math.Round(lengthM, 3), "M", units, culture);

    /// <summary>An angle to the tenth of a degree.</summary>
    public static string Degrees(double angleDeg, DisplayUnits units, CultureInfo culture) => QuantityText.Shown(Math.Round(angleDeg, 1), "Deg", units, culture);

    private static double TwoDigits(double value)
    {
        if (value == 0)
        {
            return 0;
        }

        double step = Math.Pow(10, Math.Floor(Math.Log10(Math.Abs(value))) - 1);
        return Math.Round(value / step) * step;
    }
}
