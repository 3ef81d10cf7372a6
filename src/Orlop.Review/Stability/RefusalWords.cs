namespace Orlop.Review.Stability;

/// <summary>What a refusal of the engine says to people: without the name of a parameter in the program, and without the number a second time.</summary>
public static class RefusalWords
{
    private const string Parameter = " (Parameter '";

    /// <summary>The sentence alone.</summary>
    public static string Of(ArgumentException refused)
    {
        ArgumentNullException.ThrowIfNull(refused);
        string said = refused.Message;
        int end = said.IndexOf(Parameter, StringComparison.Ordinal);
        return end < 0 ? said : said[..end];
    }
}
