using Orlop.Presentation.Views;
using Orlop.Presentation.Words;

namespace Orlop.App.CommandLine;

/// <summary>How a part is made dead, as plain text.</summary>
internal static class IsolationText
{
    public static void Write(TextWriter output, IsolationView plan)
    {
        output.WriteLine(plan.Status);
        if (plan.ReadBefore.Length > 0)
        {
            Write(output, $"{ReadBeforeWords.Head}:", plan.ReadBefore);
            output.WriteLine();
            output.WriteLine(ReadBeforeWords.Caution);
        }

        Write(output, "", plan.Steps, isNumbered: true);
        Write(output, "Cannot be made dead:", plan.Cannot);
        Write(output, "Stays live:", plan.StaysLive);
        Write(output, "Prove it dead:", plan.Proofs);
        Write(output, "Switch on again, in this order:", plan.Restore, isNumbered: true);
        output.WriteLine();
        output.WriteLine(IsolationView.Caution);
    }

    private static void Write(TextWriter output, string title, IReadOnlyList<string> lines, bool isNumbered = false)
    {
        if (lines.Count == 0)
        {
            return;
        }

        output.WriteLine();
        if (title.Length > 0)
        {
            output.WriteLine(title);
        }

        for (int i = 0; i < lines.Count; i++)
        {
            output.WriteLine(isNumbered ? $"{i + 1,3}. {lines[i]}" : $"  - {lines[i]}");
        }
    }
}
