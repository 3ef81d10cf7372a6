using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using Orlop.Numerics;

namespace Orlop.Electrics.Networks;

/// <summary>
/// A network checked, numbered and analysed once, to be solved any number of times, from several threads at a time.
/// </summary>
public sealed class PreparedNetwork
{
    private readonly int[] _partOfUnknown;

    // The memory of the last solve, for the next; one that finds it taken makes its own.
    private NewtonIteration? _idle;

    private PreparedNetwork(Wiring wiring)
    {
        Wiring = wiring;
        UnknownOfJunction = ZeroOfPotential.NumberUnknowns(wiring);
        UnknownCount = UnknownOfJunction.Length == 0 ? 0 : UnknownOfJunction.Max() + 1;
        var count = wiring.Branches.Length;
        A = new int[count];
        B = new int[count];
        Slot = new int[count];
        for (var k = 0; k < count; k++)
        {
            A[k] = UnknownOfJunction[wiring.Branches[k].A];
            B[k] = UnknownOfJunction[wiring.Branches[k].B];
        }

        _partOfUnknown = ZeroOfPotential.SteadyParts(wiring, UnknownOfJunction, UnknownCount);
        Pattern = SymmetricPattern.FromPairs(UnknownCount, A, B, Slot);
        Elimination = SparseLdl.Analyse(Pattern);
        Laws = new BranchLaws(wiring);
        Ids = new ResultIds(wiring);
    }

    private PreparedNetwork(PreparedNetwork same, Wiring wiring)
    {
        Wiring = wiring;
        (UnknownOfJunction, UnknownCount, _partOfUnknown) = (same.UnknownOfJunction, same.UnknownCount, same._partOfUnknown);
        (A, B, Slot, Pattern, Elimination) = (same.A, same.B, same.Slot, same.Pattern, same.Elimination);
        Laws = new BranchLaws(wiring);
        Ids = new ResultIds(wiring, same.Ids);
    }

    internal Wiring Wiring { get; }

    internal int[] UnknownOfJunction { get; }

    internal int UnknownCount { get; }

    internal int[] A { get; }

    internal int[] B { get; }

    internal int[] Slot { get; }

    internal SymmetricPattern Pattern { get; }

    internal SparseLdl Elimination { get; }

    internal BranchLaws Laws { get; }

    internal ResultIds Ids { get; }

    /// <summary>Numbers and analyses a network that <see cref="NetworkCheck"/> finds without fault.</summary>
    /// <exception cref="ArgumentException">The network has a fault; its sentence is the message.</exception>
    public static PreparedNetwork Of(Network network)
    {
        var check = NetworkCheck.Examine(network);
        return check.Faults.IsEmpty
            ? new PreparedNetwork(check.Wiring!)
            : throw new ArgumentException(check.Faults[0].Message, nameof(network));
    }

    /// <summary>
    /// The same elements between the same nodes with the values of another network, nothing analysed again. Null where more than values differs, or a
    /// value is out of its range: that network has to be prepared, or checked, by itself.
    /// </summary>
    public PreparedNetwork? With(Network network)
    {
        ArgumentNullException.ThrowIfNull(network);
        if (Wiring.With(network) is not { } wiring)
        {
            return null;
        }

        var values = new ValueCheck(areNamesKnown: true);
        values.Examine(network);
        return values.Faults.Count == 0 ? new PreparedNetwork(this, wiring) : null;
    }

    /// <summary>The same elements between the same nodes with values that are not checked: an electromotive force of 0 or below behind a resistance is no battery, but a circuit all the same.</summary>
    internal PreparedNetwork WithUnchecked(Network network) => new(this, Wiring.With(network) ?? throw new ArgumentException("More than values differs.", nameof(network)));

    /// <summary>Finds the operating point.</summary>
    [SuppressMessage("Design", "CA1068", Justification = "Cancelling is asked for more often than progress.")]
    public NetworkResult Solve(CancellationToken token = default, IProgress<double>? progress = null) =>
        OperatingPointSearch.Run(this, Sinks.Of(Wiring), token, progress);

    /// <summary>Finds the operating point with other amounts for some loads, such as a motor that starts.</summary>
    /// <param name="loadAmounts">By id of load: W, A or ohm by its kind; at least 0, a resistance above 0.</param>
    /// <exception cref="ArgumentException">An id is no load, or an amount is out of its range.</exception>
    public NetworkResult SolveWith(IReadOnlyDictionary<string, double> loadAmounts, CancellationToken token = default)
    {
        ArgumentNullException.ThrowIfNull(loadAmounts);
        var sinks = Sinks.Of(Wiring);
        foreach (var (id, amount) in loadAmounts)
        {
            var sink = Ids.Sinks.Find(id);
            if (sink < 0 || sink >= Wiring.Loads.Length)
            {
                throw new ArgumentException($"'{id}' is not a load of the network.", nameof(loadAmounts));
            }

            var isAllowed = double.IsFinite(amount) && (sinks.Kinds[sink] == LoadKind.Resistance ? amount > 0 : amount >= 0);
            sinks.Amounts[sink] = isAllowed ? amount : throw new ArgumentException(
                string.Create(CultureInfo.InvariantCulture, $"Load '{id}': amount {amount}; allowed 0 or above, a resistance above 0."), nameof(loadAmounts));
        }

        return OperatingPointSearch.Run(this, sinks, token, progress: null);
    }

    /// <summary>Whether a branch ends in the part that metal, batteries and resistances join to an unknown.</summary>
    internal bool IsInPartOf(int unknown, int branch) =>
        (A[branch] >= 0 && _partOfUnknown[A[branch]] == _partOfUnknown[unknown])
        || (B[branch] >= 0 && _partOfUnknown[B[branch]] == _partOfUnknown[unknown]);

    /// <summary>Whether a battery stands in the part of an unknown.</summary>
    internal bool HasBattery(int unknown)
    {
        var first = Wiring.Start(BranchKind.Battery);
        for (var k = 0; k < Wiring.Batteries.Length; k++)
        {
            if (IsInPartOf(unknown, first + k))
            {
                return true;
            }
        }

        return false;
    }

    internal NewtonIteration Borrow() => Interlocked.Exchange(ref _idle, null) ?? new NewtonIteration(this);

    internal void GiveBack(NewtonIteration newton) => Volatile.Write(ref _idle, newton);

    internal static PreparedNetwork OfSound(Wiring wiring) => new(wiring);
}
