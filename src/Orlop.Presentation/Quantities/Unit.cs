namespace Orlop.Presentation.Quantities;

/// <summary>A unit that may be typed, and how it turns into the unit of the model: (number + shift) × times ÷ over.</summary>
public sealed class Unit
{
    private readonly string[] _symbols;
    private readonly string[] _words;

    internal Unit(string symbol, decimal times, decimal over = 1, decimal shift = 0, string symbols = "", string words = "", Unit? then = null)
    {
        Symbol = symbol;
        Times = times;
        Over = over;
        Shift = shift;
        Then = then;
        _symbols = [symbol, .. symbols.Split(' ', StringSplitOptions.RemoveEmptyEntries)];
        _words = words.Split(' ', StringSplitOptions.RemoveEmptyEntries);
    }

    /// <summary>How it is written.</summary>
    public string Symbol { get; }

    internal decimal Times { get; }

    internal decimal Over { get; }

    internal decimal Shift { get; }

    /// <summary>The unit of a bare number after this one: inches after feet.</summary>
    internal Unit? Then { get; }

    /// <summary>True when the text names this unit; symbols keep their capitals (mΩ is not MΩ), words do not.</summary>
    internal bool IsNamed(string text) =>
        _symbols.Contains(text, StringComparer.Ordinal) || _words.Contains(text, StringComparer.OrdinalIgnoreCase);

    internal decimal ToModel(decimal number) => (number + Shift) * Times / Over;

    internal decimal DifferenceToModel(decimal number) => number * Times / Over;

    internal double FromModel(double value) => (value * (double)Over / (double)Times) - (double)Shift;

    internal double DifferenceFromModel(double value) => value * (double)Over / (double)Times;

    /// <summary>The same unit where the model's unit is this many times smaller.</summary>
    internal Unit InSmaller(decimal times) => new(Symbol, Times * times, Over, Shift, string.Join(' ', _symbols), string.Join(' ', _words), Then?.InSmaller(times));
}
