using System.Collections.Immutable;
using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;

namespace Orlop.Review.Findings;

/// <summary>A number in a sentence or working, with the unit suffix of the model's properties, so that it can be shown in other units.</summary>
/// <param name="Value">In the unit of <paramref name="Suffix"/>.</param>
/// <param name="Suffix">A suffix of the closed list: <c>A</c>, <c>V</c>, <c>M</c>, <c>Mm2</c>, <c>Fraction</c>.</param>
public sealed record Amount(double Value, string Suffix)
{
    /// <summary>Value and suffix with up to four significant digits, for logs and JSON; people get it through Presentation.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Value:G4} {Suffix}");
}

/// <summary>A piece of a sentence: plain text, or an amount.</summary>
public sealed record SentencePart(string? Text, Amount? Amount);

/// <summary>A sentence a person reads, with its numbers kept as amounts. Written as an interpolated string.</summary>
public sealed record Sentence(ImmutableArray<SentencePart> Parts)
{
    /// <summary>Makes a sentence of an interpolated string: <c>Sentence.Of($"{name} carries {new Amount(60, "A")}")</c>.</summary>
    public static Sentence Of(SentenceBuilder builder) => new(builder.Parts);

    public bool Equals(Sentence? other) => other is not null && Parts.AsSpan().SequenceEqual(other.Parts.AsSpan());

    public override int GetHashCode() => Parts.IsDefaultOrEmpty ? 0 : HashCode.Combine(Parts.Length, Parts[0]);

    public override string ToString()
    {
        StringBuilder text = new();
        foreach (SentencePart part in Parts)
        {
            text.Append(part.Amount?.ToString() ?? part.Text);
        }

        return text.ToString();
    }
}

/// <summary>Collects the pieces of an interpolated sentence.</summary>
[InterpolatedStringHandler]
public sealed class SentenceBuilder
{
    private readonly ImmutableArray<SentencePart>.Builder _parts;

    public SentenceBuilder(int literalLength, int formattedCount) =>
        _parts = ImmutableArray.CreateBuilder<SentencePart>(formattedCount + (literalLength > 0 ? 1 : 0));

    internal ImmutableArray<SentencePart> Parts => _parts.ToImmutable();

    public void AppendLiteral(string value) => _parts.Add(new SentencePart(value, null));

    public void AppendFormatted(string? value) => _parts.Add(new SentencePart(value ?? "", null));

    public void AppendFormatted(char value) => _parts.Add(new SentencePart(value.ToString(), null));

    public void AppendFormatted(int value) => _parts.Add(new SentencePart(value.ToString(CultureInfo.InvariantCulture), null));

    public void AppendFormatted(Amount value) => _parts.Add(new SentencePart(null, value));

    public void AppendFormatted(Sentence value) => _parts.AddRange(value.Parts);
}
