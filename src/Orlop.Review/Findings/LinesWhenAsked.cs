using System.Collections.Immutable;
using System.Runtime.InteropServices;

namespace Orlop.Review.Findings;

/// <summary>Lines of working, written out when they are first read and then kept. Safe from several threads.</summary>
internal sealed class LinesWhenAsked
{
    private Func<ImmutableArray<WorkingLine>>? _write;
    private WorkingLine[]? _lines;

    public LinesWhenAsked(ImmutableArray<WorkingLine> lines) => _lines = ImmutableCollectionsMarshal.AsArray(lines) ?? [];

    public LinesWhenAsked(Func<ImmutableArray<WorkingLine>> write) => _write = write;

    public static LinesWhenAsked None { get; } = new([]);

    public ImmutableArray<WorkingLine> Lines => ImmutableCollectionsMarshal.AsImmutableArray(Volatile.Read(ref _lines) ?? Write());

    // Two threads may write the same; the first is kept, and what it was written from is let go.
    private WorkingLine[] Write()
    {
        Func<ImmutableArray<WorkingLine>>? write = Volatile.Read(ref _write);
        if (write is not null)
        {
            Interlocked.CompareExchange(ref _lines, ImmutableCollectionsMarshal.AsArray(write()), null);
            Volatile.Write(ref _write, null);
        }

        return Volatile.Read(ref _lines)!;
    }
}
