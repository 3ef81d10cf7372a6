using Orlop.Boat.Alterations;
using Orlop.Boat.Tests.Boats;
using Orlop.Boat.Things;
using Orlop.Boat.Validation;
using Orlop.Boat.Values;
using Xunit;

namespace Orlop.Boat.Tests.Validation;

public sealed class BoatValidationTests
{
    private static readonly BoatModel Boat = SmallBoat.Model;

    [Fact]
    public void Check_GoodBoat_FindsNothing() => Assert.Empty(BoatValidation.Check(Boat));

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    public void Check_NotFinite_IsRefused(double value)
    {
        Problem problem = Assert.Single(BoatValidation.Check(new BoatModel { Things = [new Gear { Id = "box", MassKg = value }] }));

        Assert.Equal("things[0] 'box' /massKg", problem.Path);
        Assert.Contains("not a finite number", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_ChoiceThatIsNone_IsRefused() =>
        Assert.Contains("exact, measured", Assert.Single(BoatValidation.Check(new BoatModel { Things = [new Gear { Id = "box", MassKg = new Quantity(1, (Knowledge)9) }] })).Allowed, StringComparison.Ordinal);

    // A seal that closes on nothing that its bore lets through.
    [Theory]
    [InlineData(12.0, true)]
    [InlineData(12.1, false)]
    public void Check_GlandThatClosesOnNothingItTakes_IsRefused(double leastClampedMm, bool isGood)
    {
        Way way = new() { Id = "way", Means = WayKind.Gland, Holes = [new WayHole { Where = "deck", Guard = EdgeGuard.Gland, BoreMm = 12, LeastClampedMm = leastClampedMm }] };
        Assert.Equal(isGood ? Array.Empty<string>() : ["things[0] 'way' /holes/0/leastClampedMm"], BoatValidation.Check(new BoatModel { Things = [way] }).Select(problem => problem.Path));
    }

    [Fact]
    public void Check_NullWhereSomethingIsRequired_IsRefused() =>
        Assert.Equal("things[0] 'picture' /sha256", Assert.Single(BoatValidation.Check(new BoatModel { Things = [new Photograph { Id = "picture", Of = "picture", Sha256 = null!, MediaType = "image/png" }] })).Path);

    [Fact]
    public void CheckCandidate_LosesATerminalThatACableUses_IsRefused()
    {
        ElectricLoad pump = Boat.Find<ElectricLoad>("pump")! with { IsAc = true };

        IReadOnlyList<Problem> problems = BoatValidation.Check(Boat, pump);
        Assert.Equal(
            ["things[8] 'pump-cable' /cores/0/to", "things[8] 'pump-cable' /cores/1/from", "things[11] 'pump-voltage' /minus"],
            problems.Select(problem => problem.Path));
        Assert.Equal("pump.l, pump.n, pump.pe", problems[0].Allowed);
    }

    [Fact]
    public void CheckCandidate_NewAndGood_FindsNothing() =>
        Assert.Empty(BoatValidation.Check(Boat, new Gear { Id = "anchor", MassKg = 25, Space = "engine-room" }));

    [Fact]
    public void CheckCandidate_OldProblemElsewhere_IsNotToldAgain()
    {
        BoatModel broken = Boat.WithThings([.. Boat.Things, new Gear { Id = "anchor", Space = "locker" }]);

        Assert.Single(BoatValidation.Check(broken));
        Assert.Empty(BoatValidation.Check(broken, new Gear { Id = "oar" }));
        Assert.Single(BoatValidation.Check(broken, new Gear { Id = "oar", MassKg = -1 }));
    }

    [Theory]
    [InlineData(AlterationStatus.Draft, true)]
    [InlineData(AlterationStatus.Accepted, true)]
    [InlineData(AlterationStatus.UnderWay, true)]
    [InlineData(AlterationStatus.Built, false)]
    [InlineData(AlterationStatus.Dropped, false)]
    public void Check_AlterationRemovesWhatACableNeeds_IsToldAtTheEdit(AlterationStatus status, bool isRefused)
    {
        Alteration removal = new() { Id = "no-fuse", Status = status, Edits = [BoatEdits.Remove(Boat.Find("main-fuse")!)] };
        IReadOnlyList<Problem> problems = BoatValidation.Check(Boat, removal);

        Assert.Equal(isRefused ? 2 : 0, problems.Count);
        Assert.All(problems, problem => Assert.Equal("things[13] 'no-fuse' /edits/0", problem.Path));
        Assert.All(problems, problem => Assert.Contains("After this edit", problem.Message, StringComparison.Ordinal));
    }

    [Fact]
    public void Check_AlterationAddsACableToNowhere_IsToldInTheEdit()
    {
        Cable cable = new() { Id = "new-cable", AreaMm2 = 6, Cores = [new Core { Id = "plus", From = new Terminal("bank", "+"), To = new Terminal("winch", "+") }] };
        Alteration addition = new() { Id = "winch-cable", Edits = [BoatEdits.Add(cable)] };

        Assert.Equal("things[13] 'winch-cable' /edits/0/becomes/cores/0/to", Assert.Single(BoatValidation.Check(Boat, addition)).Path);
    }

    [Fact]
    public void Check_AlterationRemovesWhatWasMeasuredAndPhotographed_IsAllowed()
    {
        BoatModel bare = Boat.WithThings(Boat.Things.Where(thing => thing is not Alteration));
        Alteration removal = new()
        {
            Id = "no-pump",
            Edits = [BoatEdits.Remove(bare.Find("pump-cable")!), BoatEdits.Remove(bare.Find("pump")!)],
        };

        Assert.Empty(BoatValidation.Check(bare, removal));
    }

    [Fact]
    public void Check_EditOfNothing_IsRefused() =>
        Assert.Equal("things[13] 'empty' /edits/0", Assert.Single(BoatValidation.Check(Boat, new Alteration { Id = "empty", Edits = [new Edit { Id = "pump" }] })).Path);

    [Fact]
    public void Check_AlterationThatClashes_IsLeftToTheOwner()
    {
        Protection other = Boat.Find<Protection>("main-fuse")! with { RatedA = 63 };

        Assert.Empty(BoatValidation.Check(Boat, new Alteration { Id = "stale", Edits = [BoatEdits.Remove(other)] }));
    }
}
