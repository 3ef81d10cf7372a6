using Orlop.Boat.Format;

namespace Orlop.Boat.Tests.Boats;

/// <summary>A boat of a dozen things that obeys every rule, to be broken one rule at a time.</summary>
internal static class SmallBoat
{
    public static string Text { get; } = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Boats", "small.json"));

    public static BoatModel Model { get; } = BoatJson.Read(Text).Boat ?? throw new InvalidOperationException(string.Join('\n', BoatJson.Read(Text).Problems));

    /// <summary>The text with one piece replaced, which must stand in it exactly once.</summary>
    public static string With(string piece, string by)
    {
        int at = Text.IndexOf(piece, StringComparison.Ordinal);
        return at >= 0 && Text.IndexOf(piece, at + 1, StringComparison.Ordinal) < 0
            ? Text.Replace(piece, by, StringComparison.Ordinal)
            : throw new ArgumentException($"'{piece}' does not stand in the small boat exactly once.", nameof(piece));
    }
}
