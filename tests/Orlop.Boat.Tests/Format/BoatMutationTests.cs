using System.Text;
using System.Text.Json.Nodes;
using Orlop.Boat.Format;
using Orlop.Boat.Tests.Boats;
using Orlop.Boat.Validation;
using Xunit;

namespace Orlop.Boat.Tests.Format;

/// <summary>Ten thousand broken files from a fixed seed: none throws, each refusal names a place, what is not refused is a boat.</summary>
public sealed class BoatMutationTests
{
    private const int FileCount = 10_000;
    private const int Seed = 20260430;
    private static readonly string[] Values = ["null", "true", "-1", "1e308", "1e999", "\"\"", "\"x\"", "\"\\ud800\"", "[]", "{}", "[[]]", "{\"value\":1}", "\"bank.+\"", "\"2026-01-01\"", "0.5"];

    [Fact]
    public void Read_MutatedFiles_NeverThrowsAndAlwaysSaysWhere()
    {
        Random random = new(Seed);
        int refused = 0;
        for (int i = 0; i < FileCount; i++)
        {
            byte[] file = Mutated(random, i % 5);
            BoatReadResult result = BoatJson.Read(file);
            if (result.IsGood)
            {
                Assert.Equal(result.Boat, BoatJson.Read(BoatJson.Write(result.Boat)).Boat);
                continue;
            }

            refused++;
            Assert.NotEmpty(result.Problems);
            Assert.All(result.Problems, problem => Assert.True(
                problem.Path.Length > 0 && problem.Found.Length > 0 && problem.Allowed.Length > 0 && problem.Message.Length is > 0 and < 400,
                problem.ToString()));
            Assert.All(result.Problems, problem => Assert.True(NamesAPlace(problem), problem.ToString()));
        }

        // Some mutations leave a boat (a digit, a word of a note); most must not.
        Assert.InRange(refused, FileCount / 2, FileCount - 500);
    }

    // A thing by its position, a member of the file, or line and column of the text.
    private static bool NamesAPlace(Problem problem) =>
        problem.Path.StartsWith("things[", StringComparison.Ordinal) || problem.Path.StartsWith("boat /", StringComparison.Ordinal)
        || problem.Found == "nothing" || (problem.Found.Contains("line ", StringComparison.Ordinal) && problem.Found.Contains("column ", StringComparison.Ordinal));

    private static byte[] Mutated(Random random, int how)
    {
        byte[] bytes = Encoding.UTF8.GetBytes(SmallBoat.Text);
        string[] lines = SmallBoat.Text.Split('\n');
        int line = random.Next(lines.Length), other = random.Next(lines.Length);
        switch (how)
        {
            case 0:
                for (int k = random.Next(1, 4); k > 0; k--)
                {
                    bytes[random.Next(bytes.Length)] = (byte)random.Next(256);
                }

                return bytes;
            case 1:
                return bytes[..random.Next(bytes.Length)];
            case 2:
                (lines[line], lines[other]) = random.Next(3) switch
                {
                    0 => ("", lines[other]),
                    1 => (lines[line], lines[other] + lines[line]),
                    _ => (lines[other], lines[line]),
                };
                return Encoding.UTF8.GetBytes(string.Join('\n', lines));
            case 3:
                int colon = lines[line].IndexOf(':', StringComparison.Ordinal);
                string end = lines[line].EndsWith(',') ? "," : "";
                lines[line] = colon < 0 ? lines[line] : $"{lines[line][..colon]}: {Values[random.Next(Values.Length)]}{end}";
                return Encoding.UTF8.GetBytes(string.Join('\n', lines));
            default:
                JsonNode root = JsonNode.Parse(SmallBoat.Text)!;
                Break(random, root);
                return Encoding.UTF8.GetBytes(root.ToJsonString());
        }
    }

    private static void Break(Random random, JsonNode root)
    {
        JsonNode node = root;
        while (true)
        {
            switch (node)
            {
                case JsonObject { Count: > 0 } fields:
                    string name = fields.ElementAt(random.Next(fields.Count)).Key;
                    if (fields[name] is JsonObject or JsonArray && random.Next(5) > 0)
                    {
                        node = fields[name]!;
                        continue;
                    }

                    JsonNode? value = fields[name];
                    fields.Remove(name);
                    if (random.Next(3) > 0)
                    {
                        fields[random.Next(2) == 0 ? name : name + "X"] = random.Next(2) == 0 ? value : JsonNode.Parse(random.Next(2) == 0 ? "-7.5" : "\"feed\"");
                    }

                    return;
                case JsonArray { Count: > 0 } items:
                    int index = random.Next(items.Count);
                    if (random.Next(4) > 0)
                    {
                        node = items[index]!;
                        continue;
                    }

                    if (random.Next(2) == 0)
                    {
                        items.RemoveAt(index);
                    }
                    else
                    {
                        items.Add(items[index]!.DeepClone());
                    }

                    return;
                default:
                    return;
            }
        }
    }
}
