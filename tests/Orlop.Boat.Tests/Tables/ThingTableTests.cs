using System.Globalization;
using CsCheck;
using Orlop.Boat.Alterations;
using Orlop.Boat.Tables;
using Orlop.Boat.Tests.Boats;
using Orlop.Boat.Things;
using Orlop.Boat.Values;
using Xunit;

namespace Orlop.Boat.Tests.Tables;

public sealed class ThingTableTests
{
    private static readonly BoatModel Boat = SmallBoat.Model.WithThings(
    [
        .. SmallBoat.Model.Things,
        new Gear { Id = "anchor", Name = "Anchor, \"big\"", MassKg = 25, Place = new Place(11, 0, 2.5) },
        new Gear { Id = "chain", MassKg = new Quantity(60, Knowledge.Measured, 2) },
    ]);

    [Fact]
    public void Export_Gear_IsATableWithUnitsInItsHeader() => Assert.Equal(
        """"
        id,name,mass_kg,mass_kg_known,mass_kg_plus_minus,place_x_m,place_y_m,place_z_m,size_length_m,size_breadth_m,size_height_m,place_deviation_m,space,heat_w,heat_in,note
        anchor,"Anchor, ""big""",25,,,11,0,2.5,,,,,,,,
        chain,,60,measured,2,,,,,,,,,,,

        """",
        ThingTable.Export(Boat, "gear"));

    [Fact]
    public void ImportOfExport_EveryKindOfAnyBoat_IsTheSameBoat() => Gen.Int.Sample(
        seed =>
        {
            BoatModel boat = RandomBoat.Of(seed);
            foreach (string kind in ThingKinds.ByName.Keys)
            {
                string csv = ThingTable.Export(boat, kind);
                BoatModel emptied = boat.WithThings(boat.Things.Where(thing => ThingKinds.NameOf(thing) != kind));
                TableImport same = ThingTable.Import(boat, kind, csv);
                Assert.True(same.Problems.Count == 0, string.Join('\n', same.Problems));
                Assert.Empty(same.Edits);
                Assert.Equal(csv, ThingTable.Export(BoatEdits.Apply(emptied, Additions(boat, emptied, kind, csv)).Boat, kind));
            }
        },
        iter: 20);

    private static IEnumerable<Edit> Additions(BoatModel boat, BoatModel emptied, string kind, string csv)
    {
        Thing[] wanted = [.. boat.Things.Where(thing => ThingKinds.NameOf(thing) == kind)];
        TableImport import = ThingTable.Import(emptied, kind, csv);
        Assert.True(import.Problems.Count == 0, string.Join('\n', import.Problems));
        Assert.Equal(wanted, import.Edits.Select(edit => edit.Becomes));
        return import.Edits;
    }

    [Theory]
    [InlineData(';')]
    [InlineData('\t')]
    public void Import_OtherSeparator_IsSeenFromTheHeader(char separator)
    {
        string csv = string.Join(separator, "id", "name", "mass_kg") + "\r\n" + string.Join(separator, "oar", "Oar, long", "3.5") + "\r\n";

        Assert.Equal(new Gear { Id = "oar", Name = "Oar, long", MassKg = 3.5 }, Assert.Single(ThingTable.Import(Boat, "gear", csv).Edits).Becomes);
    }

    [Fact]
    public void Import_ColumnLeftOut_LeavesTheFieldAsItIs()
    {
        Edit edit = Assert.Single(ThingTable.Import(Boat, "gear", "id,name\nchain,Anchor chain\n").Edits);

        Assert.Equal(Boat.Find<Gear>("chain")! with { Name = "Anchor chain" }, edit.Becomes);
        Assert.Equal(Boat.Find("chain"), edit.Was);
    }

    [Fact]
    public void Import_SameValueWithoutItsKnowledge_KeepsWhatIsKnown() => Assert.Empty(ThingTable.Import(Boat, "gear", "id,mass_kg\nchain,60\n").Edits);

    [Fact]
    public void Import_OtherValueWithoutItsKnowledge_IsTakenAsTyped() =>
        Assert.Equal(new Quantity(61), Assert.IsType<Gear>(Assert.Single(ThingTable.Import(Boat, "gear", "id,mass_kg\nchain,61\n").Edits).Becomes).MassKg);

    [Theory]
    [InlineData("name,mass_kg\nOar,3\nOar,4\nAnchor,30\n")]
    [InlineData("id,name,mass_kg\n,Oar,3\n,Oar,4\n,Anchor,30\n")]
    public void Import_RowWithoutId_IsANewThingWithAnIdOfItsName(string csv)
    {
        TableImport import = ThingTable.Import(Boat, "gear", csv, id => id == "oar");

        Assert.Empty(import.Problems);
        Assert.Equal(["oar-2", "oar-3", "anchor-2"], import.MadeIds);
        Assert.Equal(import.MadeIds, import.Edits.Select(edit => edit.Becomes!.Id));
        Assert.All(import.Edits, edit => Assert.Null(edit.Was));
    }

    [Fact]
    public void Import_RowWithNeitherIdNorName_IsRefused()
    {
        TableProblem problem = Assert.Single(ThingTable.Import(Boat, "gear", "name,mass_kg\n,3\n").Problems);

        Assert.Equal((2, "id"), (problem.Row!.Value, problem.Column));
    }

    // A title stands for its id where it is the only one; else a refusal lists the ids that there are: they were asked for and shown nowhere.
    [Fact]
    public void CountsByCondition_TakeATitle_AndARefusalListsTheConditions()
    {
        BoatModel boat = new()
        {
            Things =
            [
                new Condition { Id = "at-anchor", Name = "At anchor" }, new Condition { Id = "under-way", Name = "Under way" }, new Condition { Id = "under-way-2", Name = "Under way" },
                new Deadweight { Id = "crew", Use = DeadweightUse.People, MassKg = 80 },
            ],
        };
        Assert.Equal([new DeadweightCount("at-anchor", 3)], Assert.IsType<Deadweight>(Assert.Single(ThingTable.Import(boat, "deadweight", "id,aboard\ncrew,at Anchor: 3\n").Edits).Becomes).Aboard);
        foreach (string said in new[] { "Under way", "At sea" })
        {
            TableProblem problem = Assert.Single(ThingTable.Import(boat, "deadweight", $"id,aboard\ncrew,{said}: 2\n").Problems);
            Assert.Contains("at-anchor (“At anchor”), under-way (“Under way”), under-way-2 (“Under way”)", problem.Allowed, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void CountsByCondition_AreWrittenAndReadAsPeopleWriteThem()
    {
        BoatModel boat = new()
        {
            Things =
            [
                new Condition { Id = "at-anchor" }, new Condition { Id = "under-way" },
                new Deadweight { Id = "crew", Use = DeadweightUse.People, MassKg = 80, Aboard = [new DeadweightCount("at-anchor", 2), new DeadweightCount("under-way", 1)] },
            ],
        };
        string csv = ThingTable.Export(boat, "deadweight");

        Assert.Contains(",at-anchor: 2; under-way: 1,", csv, StringComparison.Ordinal);
        Assert.Empty(ThingTable.Import(boat, "deadweight", csv).Edits);
        Assert.Equal(3, Assert.IsType<Deadweight>(Assert.Single(ThingTable.Import(boat, "deadweight", "id,aboard\ncrew,at-anchor:3\n").Edits).Becomes).Aboard[0].PieceCount);
        Assert.NotEmpty(ThingTable.Import(boat, "deadweight", "id,aboard\ncrew,at-anchor: two\n").Problems);
        Assert.NotEmpty(ThingTable.Import(boat, "deadweight", "id,aboard\ncrew,at-anchor\n").Problems);
        Assert.NotEmpty(ThingTable.Import(boat, "deadweight", "id,aboard\ncrew,at-sea: 2\n").Problems);
    }

    [Fact]
    public void Import_RowLeftOut_RemovesNothing() => Assert.Empty(ThingTable.Import(Boat, "gear", "id,mass_kg\nanchor,25\n").Edits);

    [Fact]
    public void Import_ManyMistakes_AreAllToldByRowAndColumn()
    {
        TableImport import = ThingTable.Import(Boat, "gear", "id,mass_kg,place_x_m,space\nanchor,\"25,5\",,\nOar,3,,\nchain,-1,2,locker\nanchor,25,,,9\n");

        Assert.Empty(import.Edits);
        Assert.Equal(
            [(2, "mass_kg"), (3, "id"), (4, "place_y_m"), (4, "place_z_m"), (4, "mass_kg"), (4, "space"), (5, "row"), (5, "id")],
            import.Problems.Select(problem => (problem.Row ?? 0, problem.Column)));
        Assert.Contains("decimal point", import.Problems[0].Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "empty")]
    [InlineData("mass_kg\n25\n", "does not say which thing")]
    [InlineData("id,mass_lb\nanchor,3\n", "kilograms are wanted: mass_kg")]
    [InlineData("id,mass_kgg\nanchor,3\n", "mass_kg is nearest")]
    [InlineData("id,\nanchor,25\n", "no name")]
    [InlineData("id,name,name\nanchor,a,b\n", "more than once")]
    [InlineData("id,mass_kg,mass_kg_known\nanchor,,guessed\n", "in part only")]
    [InlineData("id,mass_kg,mass_kg_known\nanchor,3,perhaps\n", "Known does not fit")]
    [InlineData("id,mass_kg\nbank,3\n", "same id")]
    public void Import_OneMistake_IsTold(string csv, string message) =>
        Assert.Contains(ThingTable.Import(Boat, "gear", csv).Problems, problem => problem.Message.Contains(message, StringComparison.Ordinal));

    [Fact]
    public void Import_EmptyColumnsAndRowsOfASpreadsheet_AreNothing() =>
        Assert.Empty(ThingTable.Import(Boat, "gear", "id,mass_kg,,\nanchor,25,,\n,,,\n,,,\n").Problems);

    [Fact]
    public void Import_MistakeInsideAList_IsToldWithItsPlace()
    {
        TableProblem problem = Assert.Single(ThingTable.Import(Boat, "cable", "id,cores\nfeed,\"[{\"\"id\"\":\"\"plus\"\",\"\"from\"\":\"\"bank.+\"\",\"\"to\"\":\"\"main-fuse.up\"\"}]\"\n").Problems);

        Assert.Equal((2, "cores"), (problem.Row!.Value, problem.Column));
        Assert.Contains("/0/to", problem.Message, StringComparison.Ordinal);
        Assert.Equal("main-fuse.in, main-fuse.out", problem.Allowed);
    }

    [Fact]
    public void Import_TableThatBreaksAnotherThing_SaysWhich() => Assert.Contains(
        ThingTable.Import(Boat, "load", "id,is_ac\npump,true\n").Problems,
        problem => problem.Row is null && problem.Column.Contains("pump-cable", StringComparison.Ordinal));

    [Fact]
    public void ImportOfExport_CommaDecimalCulture_IsTheSameBoat()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
        try
        {
            TableImport import = ThingTable.Import(new BoatModel(), "gear", ThingTable.Export(Boat, "gear"));
            Assert.Equal(Boat.All<Gear>(), import.Edits.Select(edit => edit.Becomes));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Import_MutatedTables_NeverThrows()
    {
        Random random = new(20260501);
        string csv = ThingTable.Export(Boat, "cable");
        int refused = 0;
        for (int i = 0; i < 2000; i++)
        {
            char[] letters = csv.ToCharArray();
            for (int k = random.Next(1, 5); k > 0; k--)
            {
                letters[random.Next(letters.Length)] = "\",;\t\n\r{}[]:x1.-\0 "[random.Next(17)];
            }

            TableImport import = ThingTable.Import(Boat, "cable", new string(letters));
            refused += import.Problems.Count > 0 ? 1 : 0;
            Assert.All(import.Problems, problem => Assert.True(problem.Column.Length > 0 && problem.Found.Length > 0 && problem.Allowed.Length > 0 && problem.Message.Length > 0, problem.ToString()));
        }

        Assert.InRange(refused, 1000, 1999);
    }
}
