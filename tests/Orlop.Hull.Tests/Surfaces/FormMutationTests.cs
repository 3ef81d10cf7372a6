using Orlop.Hull.Surfaces;
using Xunit;

namespace Orlop.Hull.Tests.Surfaces;

/// <summary>Ten thousand spoilt hulls: each ends as a closed surface or as a list of what is wrong, never as anything else.</summary>
public sealed class FormMutationTests
{
    private static readonly double[] Odd = [double.NaN, double.PositiveInfinity, double.NegativeInfinity, -1, 0, 1e-12, 1e9, 5, -3, 0.7];

    [Fact]
    public void Build_TenThousandMutations_ClosedOrRefused()
    {
        var random = new Random(20260117);
        HullForm[] starts = [.. Enum.GetValues<StartingShape>().Select(shape => StartingForm.Create("start", shape, 12, 4, 2))];
        var (closed, refused) = (0, 0);
        for (var i = 0; i < 10_000; i++)
        {
            var form = starts[random.Next(starts.Length)];
            for (var change = random.Next(1, 4); change > 0; change--)
            {
                form = Spoilt(form, random);
            }

            var built = HullSurface.Build(form, new FormFineness(1, 1));
            Assert.Equal(built.Surface is null, !built.Problems.IsEmpty);
            if (built.Surface is { } mesh)
            {
                Assert.Empty(mesh.Problems);
                Assert.True(mesh.SignedVolumeM3 > 0);
                closed++;
            }
            else
            {
                refused++;
            }
        }

        Assert.True(closed > 500 && refused > 500, $"{closed} closed, {refused} refused");
    }

    private static HullForm Spoilt(HullForm form, Random random)
    {
        if (form.Sections.Length == 0)
        {
            return form;
        }

        var at = random.Next(form.Sections.Length);
        var section = form.Sections[at];
        switch (random.Next(7))
        {
            case 0: return form with { Sections = form.Sections.RemoveAt(at) };
            case 1: return form with { Sections = form.Sections.Insert(random.Next(form.Sections.Length), section) };
            case 2: return form with { Sections = form.Sections.SetItem(at, section with { Points = [.. section.Points.Reverse()] }) };
            case 3 when section.Points.Length > 0: return form with { Sections = form.Sections.SetItem(at, section with { Points = section.Points.RemoveAt(random.Next(section.Points.Length)) }) };
            case 4: return form with { StarboardSections = form.Sections.SetItem(at, section with { IsSharp = !section.IsSharp }) };
            default:
                if (section.Points.Length == 0)
                {
                    return form;
                }

                var which = random.Next(section.Points.Length);
                var point = section.Points[which];
                var value = random.Next(2) == 0 ? Odd[random.Next(Odd.Length)] : 4 * (random.NextDouble() - 0.25);
                var spoilt = random.Next(4) switch
                {
                    0 => point with { XM = value },
                    1 => point with { HalfBreadthM = value },
                    2 => point with { HeightM = value },
                    _ => point with { Line = random.Next(2) == 0 ? "chine" : "other" },
                };
                return form with { Sections = form.Sections.SetItem(at, section with { Points = section.Points.SetItem(which, spoilt) }) };
        }
    }
}
