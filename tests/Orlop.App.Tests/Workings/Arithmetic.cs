using System.Globalization;

namespace Orlop.App.Tests.Workings;

/// <summary>Works out what is printed with +, −, ×, ÷, √ and brackets, knowing nothing of the program.</summary>
internal sealed class Arithmetic
{
    private readonly string _text;
    private int _at;

    private Arithmetic(string text) => _text = text.Replace(" ", "", StringComparison.Ordinal);

    public static double Of(string text)
    {
        Arithmetic reading = new(text);
        double value = reading.Sum();
        return reading._at == reading._text.Length ? value : throw new FormatException($"'{text}' goes on after {reading._at} signs.");
    }

    private double Sum()
    {
        double value = Product();
        while (Next is '+' or '−')
        {
            value = Take() == '+' ? value + Product() : value - Product();
        }

        return value;
    }

    private double Product()
    {
        double value = Factor();
        while (Next is '×' or '÷')
        {
            value = Take() == '×' ? value * Factor() : value / Factor();
        }

        return value;
    }

    private double Factor()
    {
        switch (Next)
        {
            case '√':
                Take();
                return Math.Sqrt(Factor());
            case '(':
                Take();
                double value = Sum();
                Take();
                return value;
            default:
                int from = _at;
                _at += Next == '−' ? 1 : 0;
                while (char.IsAsciiDigit(Next) || Next is '.' or 'E' || (Next is '+' or '−' && _text[_at - 1] == 'E'))
                {
                    _at++;
                }

                return double.Parse(_text[from.._at].Replace('−', '-'), CultureInfo.InvariantCulture);
        }
    }

    private char Next => _at < _text.Length ? _text[_at] : '\0';

    private char Take() => _text[_at++];
}
