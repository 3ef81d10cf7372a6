namespace Orlop.Electrics.Heat;

/// <summary>Places of cables in a bundle: one in the middle, six around it, twelve around those, like coins on a table. Each has up to six neighbours, and air where one is missing.</summary>
internal sealed class BundlePlaces
{
    private const int MostNeighbours = 6;

    private static readonly (int Q, int R)[] Ways = [(1, 0), (0, 1), (-1, 1), (-1, 0), (0, -1), (1, -1)];

    /// <summary>The first so many places, from the middle outwards.</summary>
    public BundlePlaces(int count)
    {
        List<(int Q, int R)> places = [(0, 0)];
        for (int ring = 1; places.Count < count; ring++)
        {
            (int Q, int R) at = (0, -ring);
            foreach ((int Q, int R) way in Ways)
            {
                for (int step = 0; step < ring && places.Count < count; step++)
                {
                    places.Add(at);
                    at = (at.Q + way.Q, at.R + way.R);
                }
            }
        }

        Dictionary<(int, int), int> index = places.Index().ToDictionary(place => place.Item, place => place.Index);
        Touching = [.. places.Index().SelectMany(place => Ways
            .Select(way => index.GetValueOrDefault((place.Item.Q + way.Q, place.Item.R + way.R), -1))
            .Where(other => other > place.Index)
            .Select(other => (place.Index, other)))];
        int[] neighbours = new int[count];
        foreach ((int one, int other) in Touching)
        {
            neighbours[one]++;
            neighbours[other]++;
        }

        OpenFraction = [.. neighbours.Select(touching => 1 - ((double)touching / MostNeighbours))];
    }

    /// <summary>Pairs of places that touch.</summary>
    public (int One, int Other)[] Touching { get; }

    /// <summary>Share of each place's outside that no neighbour covers.</summary>
    public double[] OpenFraction { get; }
}
