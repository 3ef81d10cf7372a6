using System.Text.Json;
using System.Text.RegularExpressions;
using Orlop.App.Tests.CommandLine;
using Xunit;

namespace Orlop.App.Tests.Workings;

/// <summary>What a working prints can be worked out by hand: its numbers give its result, to the digits that are shown.</summary>
public sealed partial class PrintedWorkingTests
{
    [Theory]
    [InlineData("sandgrouse.json", null, 300)]
    [InlineData("sandgrouse.json", "sampling-winch", 300)]
    [InlineData("sandgrouse.json", "sampling-winch-second", 300)]
    [InlineData("sandgrouse.json", "drying-locker", 300)]
    [InlineData("one-circuit.json", null, 10)]
    [InlineData("open-workboat.json", null, 20)]
    public async Task Arithmetic_AsPrinted_GivesTheResultAsPrinted(string example, string? alteration, int leastCount)
    {
        string boat = Repository.At("examples", example);
        CommandRun run = await CommandRun.Of(alteration is null ? ["review", boat, "--json"] : ["review", boat, "--json", "--alteration", alteration]);
        using JsonDocument json = JsonDocument.Parse(run.Out);
        int count = 0;
        foreach ((string at, string expression, string shown) in Lines(json.RootElement))
        {
            Assert.True(PrintedLine.Gives(expression, shown), $"{at}: {expression} is not {shown}");
            count++;
        }

        Assert.True(count >= leastCount, $"Only {count} lines were arithmetic.");
    }

    [Theory]
    [InlineData("sampling-winch")]
    [InlineData("sampling-winch-second")]
    public async Task Use_IsALineOfTheWorking(string alteration)
    {
        CommandRun run = await CommandRun.Of(["review", Repository.At("examples", "sandgrouse.json"), "--json", "--alteration", alteration]);
        using JsonDocument json = JsonDocument.Parse(run.Out);
        (string At, JsonElement Side)[] used =
        [
            .. from finding in json.RootElement.GetProperty("findings").EnumerateArray()
               let side = finding.GetProperty("asAltered")
               where side.ValueKind == JsonValueKind.Object && side.GetProperty("verdict").GetString() == "fails" && side.GetProperty("useFraction").ValueKind == JsonValueKind.Number
               select ($"{finding.GetProperty("check").GetString()} {finding.GetProperty("subject").GetString()}", side),
        ];
        Assert.NotEmpty(used);
        Assert.All(used, one => Assert.True(one.Side.GetProperty("working").EnumerateArray().Any(line => line.GetProperty("what").GetString() == "Use"), one.At));
    }

    // A hyphen is no minus: neither before a negative number nor between two.
    [Theory]
    [InlineData("sandgrouse.json", null)]
    [InlineData("sandgrouse.json", "sampling-winch")]
    [InlineData("sandgrouse.json", "drying-locker")]
    [InlineData("one-circuit.json", null)]
    [InlineData("open-workboat.json", null)]
    [InlineData("box-barge.json", null)]
    public async Task Minus_InEveryExpression_IsNoHyphen(string example, string? alteration)
    {
        string boat = Repository.At("examples", example);
        CommandRun run = await CommandRun.Of(alteration is null ? ["review", boat, "--json"] : ["review", boat, "--json", "--alteration", alteration]);
        using JsonDocument json = JsonDocument.Parse(run.Out);
        string[] expressions = [.. Workings(json.RootElement).Select(line => line.GetProperty("expression").GetString()!)];

        Assert.DoesNotContain(expressions, expression => HyphenForMinus().IsMatch(expression));
        Assert.Contains(expressions, expression => expression.Contains('−', StringComparison.Ordinal));
    }

    private static IEnumerable<JsonElement> Workings(JsonElement review) =>
        from finding in review.GetProperty("findings").EnumerateArray()
        from side in new[] { "asBuilt", "asAltered" }
        where finding.GetProperty(side).ValueKind == JsonValueKind.Object
        from line in finding.GetProperty(side).GetProperty("working").EnumerateArray()
        select line;

    [GeneratedRegex(@"(?<![\p{L}\d.-])-[\d.]|\dE-\d|[\d)|°²³%] - [\d.(|√φ-]")]
    private static partial Regex HyphenForMinus();

    private static IEnumerable<(string At, string Expression, string Shown)> Lines(JsonElement review) =>
        from finding in review.GetProperty("findings").EnumerateArray()
        from side in new[] { "asBuilt", "asAltered" }
        where finding.GetProperty(side).ValueKind == JsonValueKind.Object
        from line in finding.GetProperty(side).GetProperty("working").EnumerateArray()
        let expression = PrintedLine.Arithmetic(line.GetProperty("expression").GetString()!)
        where line.GetProperty("value").ValueKind == JsonValueKind.Object && expression is not null
        select ($"{finding.GetProperty("check")} {finding.GetProperty("subject")}, {line.GetProperty("what")}", expression, line.GetProperty("value").GetProperty("text").GetString()!);
}
