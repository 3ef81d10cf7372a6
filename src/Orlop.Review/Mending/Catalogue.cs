using System.Collections.Frozen;
using System.Collections.Immutable;
using Orlop.Boat;
using Orlop.Boat.Tables;
using Orlop.Boat.Things;
using Orlop.Boat.Values;

namespace Orlop.Review.Mending;

/// <summary>The generic parts that mending may choose from: the built-in ones, and the owner's in their place or besides.</summary>
public sealed class Catalogue
{
    private const string TableName = "Orlop.Review.Mending.catalogue.csv";
    private const string Typical = "typical of such a part, from memory; read the sheet of the part that is bought";

    private readonly FrozenDictionary<string, CataloguePart> _byId;
    private readonly FrozenSet<string> _ownIds;

    private Catalogue(ImmutableArray<CataloguePart> parts, IEnumerable<string> ownIds, string currency)
    {
        Parts = parts;
        Currency = currency;
        _byId = parts.ToFrozenDictionary(part => part.Id, StringComparer.Ordinal);
        _ownIds = ownIds.ToFrozenSet(StringComparer.Ordinal);
    }

    /// <summary>The built-in parts as the table gives them. Ratings and sizes are exact; everything else is an estimate and says so.</summary>
    public static ImmutableArray<CataloguePart> BuiltIn { get; } = Read();

    /// <summary>All parts, in the order of their ids.</summary>
    public ImmutableArray<CataloguePart> Parts { get; }

    /// <summary>The currency of prices; empty where the owner named none.</summary>
    public string Currency { get; }

    /// <summary>The part with this id, or null.</summary>
    public CataloguePart? Find(string id) => _byId.GetValueOrDefault(id);

    /// <summary>The owner gave this part, and not the program.</summary>
    public bool IsOwn(string id) => _ownIds.Contains(id);

    /// <summary>The catalogue of a boat: built-in prices in her owner's currency, the owner's parts in place of those of the same id.</summary>
    public static Catalogue Of(BoatModel boat)
    {
        double ratio = boat.Particulars?.CurrencyRatio?.Value ?? 1;
        List<CataloguePart> own = [.. boat.All<CataloguePart>()];
        HashSet<string> ids = [.. own.Select(part => part.Id)];
        IEnumerable<CataloguePart> builtIn = BuiltIn.Where(part => !ids.Contains(part.Id)).Select(part => part with
        {
            PriceMoney = Times(part.PriceMoney, ratio),
            PriceMoneyPerM = Times(part.PriceMoneyPerM, ratio),
            MountPriceMoney = Times(part.MountPriceMoney, ratio),
        });
        return Of([.. own, .. builtIn], ids, boat.Particulars?.Currency ?? "");
    }

    /// <summary>A catalogue of these parts alone.</summary>
    public static Catalogue Of(IEnumerable<CataloguePart> parts) => Of(parts, [], "");

    private static Catalogue Of(IEnumerable<CataloguePart> parts, IEnumerable<string> ownIds, string currency) =>
        new([.. parts.OrderBy(part => part.Id, StringComparer.Ordinal)], ownIds, currency);

    private static Quantity? Times(Quantity? price, double ratio) => price is null || ratio == 1 ? price : price with { Value = price.Value * ratio };

    private static ImmutableArray<CataloguePart> Read()
    {
        using Stream stream = typeof(Catalogue).Assembly.GetManifestResourceStream(TableName)!;
        using StreamReader reader = new(stream);
        string rows = string.Join('\n', reader.ReadToEnd().Split('\n').Where(line => !line.StartsWith('#')));
        TableImport read = ThingTable.Import(new BoatModel(), "catalogue-part", rows);
        return read.Problems.Count == 0
            ? [.. read.Edits.Select(edit => AsTypical((CataloguePart)edit.Becomes!))]
            : throw new InvalidOperationException($"The built-in catalogue cannot be read: {read.Problems[0]}");
    }

    private static CataloguePart AsTypical(CataloguePart part) => part with
    {
        OuterDiameterMm = Guess(part.OuterDiameterMm),
        RatedV = Guess(part.RatedV),
        BreakingA = Guess(part.BreakingA),
        InsulationC = Guess(part.InsulationC),
        ResistanceOhm = Guess(part.ResistanceOhm),
        StartRatio = Guess(part.StartRatio),
        StartS = Guess(part.StartS),
        AreaCm2 = Guess(part.AreaCm2),
        FanM3PerH = Guess(part.FanM3PerH),
        RunningW = Guess(part.RunningW),
        MountMassKg = Guess(part.MountMassKg),
        MountPriceMoney = Guess(part.MountPriceMoney),
        TerminalMm2 = Guess(part.TerminalMm2),
        MassKg = Guess(part.MassKg),
        MassKgPerM = Guess(part.MassKgPerM),
        PriceMoney = Guess(part.PriceMoney),
        PriceMoneyPerM = Guess(part.PriceMoneyPerM),
    };

    private static Quantity? Guess(Quantity? quantity) => quantity is null ? null : quantity with { Known = Knowledge.Estimated, Method = Typical };
}
