using System.Collections.Immutable;
using Orlop.Electrics.Networks;

namespace Orlop.Electrics.Tests.Networks;

/// <summary>What a random network is made of besides two real conductors a cable, batteries and loads.</summary>
internal sealed record RandomNetworkKind
{
    /// <summary>Part of the points that get a second cable to a near point.</summary>
    public double MeshFraction { get; init; } = 0.15;

    public int PointsPerBattery { get; init; } = 40;

    public double LoadScaleFactor { get; init; } = 1;

    public bool IsHeated { get; init; }

    public bool HasLimitedSources { get; init; }

    public bool HasConverters { get; init; }

    public bool HasOtherLoads { get; init; } = true;

    public bool HasJoins { get; init; }
}

/// <summary>Random two-wire networks, the same for the same seed: points with a plus and a minus node, cables between near points.</summary>
internal static class RandomNetwork
{
    private const int Reach = 24;

    public static Network Build(int seed, int pointCount, RandomNetworkKind? kind = null)
    {
        kind ??= new RandomNetworkKind();
        var random = new Random(seed);
        var conductors = ImmutableArray.CreateBuilder<Conductor>();
        var contacts = ImmutableArray.CreateBuilder<Contact>();
        for (var point = 1; point < pointCount; point++)
        {
            Cable($"c{point}", Near(point), point);
            if (random.NextDouble() < kind.MeshFraction)
            {
                var other = Near(point);
                Cable($"m{point}", other, point);
            }
        }

        return new Network
        {
            Conductors = conductors.ToImmutable(),
            Batteries = Batteries(),
            LimitedSources = kind.HasLimitedSources ? LimitedSources() : [],
            Converters = kind.HasConverters ? Converters() : [],
            Loads = Loads(),
            Contacts = contacts.ToImmutable(),
            BondedNodes = ["n0"],
        };

        int Near(int point) => random.Next(Math.Max(0, point - Reach), point);

        double Between(double least, double most) => least + ((most - least) * random.NextDouble());

        ConductorHeating? Heating() => kind.IsHeated ? new ConductorHeating(Between(-10, 60), 105, 30, Between(40, 200)) : null;

        void Cable(string id, int from, int to)
        {
            var fuse = random.NextDouble() < 0.3;
            conductors.Add(new Conductor($"{id}-plus", fuse ? $"{id}-fuse" : $"p{from}", $"p{to}", Between(0.0005, 0.01), Heating()));
            conductors.Add(new Conductor($"{id}-minus", $"n{from}", $"n{to}", Between(0.0005, 0.01), Heating()));
            if (fuse)
            {
                contacts.Add(new Contact($"{id}-contact", $"p{from}", $"{id}-fuse", kind.HasJoins && random.NextDouble() < 0.5 ? 0 : Between(0.0001, 0.002)));
            }
        }

        ImmutableArray<Battery> Batteries()
        {
            var count = Math.Max(1, pointCount / kind.PointsPerBattery);
            return [.. Enumerable.Range(0, count).Select(k => new Battery($"b{k}", $"p{k * pointCount / count}", $"n{k * pointCount / count}", Between(25, 26), Between(0.002, 0.01)))];
        }

        ImmutableArray<LimitedSource> LimitedSources() =>
            [.. Enumerable.Range(0, 1 + (pointCount / 30)).Select(k => new LimitedSource($"s{k}", $"p{random.Next(pointCount)}", "n0", Between(25, 28.8), Between(0, 30), Between(0.001, 0.05)))];

        ImmutableArray<Converter> Converters() =>
            [.. Enumerable.Range(0, 1 + (pointCount / 30)).Select(k =>
            {
                var point = random.Next(pointCount);
                var isShared = random.NextDouble() < 0.5;
                return new Converter($"v{k}", $"p{point}", $"n{point}", $"v{k}-p", $"v{k}-n", Between(12, 230), Between(0.01, 0.1), Between(0, 5), 0.05, 1e-5, 1000, 10, isShared);
            })];

        ImmutableArray<Load> Loads()
        {
            var loads = ImmutableArray.CreateBuilder<Load>();
            for (var point = 1; point < pointCount; point++)
            {
                var choice = random.NextDouble();
                var amount = Between(1, 20) * kind.LoadScaleFactor;
                if (choice < 0.4)
                {
                    loads.Add(new Load($"l{point}", $"p{point}", $"n{point}", LoadKind.Power, amount));
                }
                else if (kind.HasOtherLoads && choice < 0.5)
                {
                    loads.Add(new Load($"l{point}", $"p{point}", $"n{point}", LoadKind.Current, amount / 25));
                }
                else if (kind.HasOtherLoads && choice < 0.6)
                {
                    loads.Add(new Load($"l{point}", $"p{point}", $"n{point}", LoadKind.Resistance, 625 / amount));
                }
            }

            if (kind.HasConverters)
            {
                for (var k = 0; k < 1 + (pointCount / 30); k++)
                {
                    loads.Add(new Load($"l-v{k}", $"v{k}-p", $"v{k}-n", LoadKind.Power, Between(1, 30)));
                }
            }

            return loads.ToImmutable();
        }
    }

    /// <summary>The same network with every list in another order.</summary>
    public static Network Shuffled(Network network, int seed)
    {
        var random = new Random(seed);
        return new Network
        {
            Conductors = Shuffle(network.Conductors),
            Contacts = Shuffle(network.Contacts),
            Batteries = Shuffle(network.Batteries),
            LimitedSources = Shuffle(network.LimitedSources),
            Converters = Shuffle(network.Converters),
            Loads = Shuffle(network.Loads),
            BondedNodes = Shuffle(network.BondedNodes),
        };

        ImmutableArray<T> Shuffle<T>(ImmutableArray<T> items)
        {
            var copy = items.ToArray();
            random.Shuffle(copy);
            return [.. copy];
        }
    }
}
