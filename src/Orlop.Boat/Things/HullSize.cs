namespace Orlop.Boat.Things;

/// <summary>How large the hull is: from the lines she is floated by, or from her particulars.</summary>
/// <param name="AftXM">Its after end, in m forward of the after perpendicular.</param>
/// <param name="LengthM">Length over all in m.</param>
/// <param name="BreadthM">Greatest breadth in m.</param>
/// <param name="DepthM">Deck edge amidships over the base line in m.</param>
public sealed record HullSize(double AftXM, double LengthM, double BreadthM, double DepthM)
{
    /// <summary>By the hull's lines where they are entered, else by the particulars; null where neither tells all of it.</summary>
    public static HullSize? Of(BoatModel boat) => OfLines(boat) ?? OfParticulars(boat);

    /// <summary>By the lines alone; null where there are fewer than two stations. Depth is that of the deck edge halfway along, straight between stations; of two sides the mean.</summary>
    public static HullSize? OfLines(BoatModel boat)
    {
        ArgumentNullException.ThrowIfNull(boat);
        if (boat.All<HullLines>().FirstOrDefault() is not { } lines || Used(lines.Stations) is not { Length: > 1 } port)
        {
            return null;
        }

        HullStation[] starboard = Used(lines.StarboardStations) is { Length: > 1 } other ? other : port;
        double[] xs = [.. port.Concat(starboard).SelectMany(station => station.Points).Select(point => point.XM)];
        double aftXM = xs.Min(), lengthM = xs.Max() - aftXM, amidshipsXM = aftXM + (lengthM / 2);
        return new HullSize(aftXM, lengthM, HalfBreadthM(port) + HalfBreadthM(starboard), (DeckM(port, amidshipsXM) + DeckM(starboard, amidshipsXM)) / 2);
    }

    private static HullSize? OfParticulars(BoatModel boat) => boat.Particulars is { LengthOverAllM: { } length, BeamM: { } beam, DepthM: { } depth } ? new HullSize(0, length.Value, beam.Value, depth.Value) : null;

    private static HullStation[] Used(IEnumerable<HullStation> stations) => [.. stations.Where(station => station.Points.Count > 1)];

    private static double HalfBreadthM(HullStation[] stations) => stations.SelectMany(station => station.Points).Max(point => point.HalfBreadthM);

    private static double DeckM(HullStation[] stations, double xM)
    {
        StationPoint[] deck = [.. stations.Select(station => station.Points[^1]).OrderBy(point => point.XM)];
        int next = Math.Clamp(Array.FindIndex(deck, point => point.XM >= xM), 1, deck.Length - 1);
        (StationPoint aft, StationPoint fore) = (deck[next - 1], deck[next]);
        double share = fore.XM > aft.XM ? Math.Clamp((xM - aft.XM) / (fore.XM - aft.XM), 0, 1) : 0;
        return aft.HeightM + (share * (fore.HeightM - aft.HeightM));
    }
}
