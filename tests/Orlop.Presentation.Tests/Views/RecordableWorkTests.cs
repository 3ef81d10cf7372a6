using Orlop.Boat;
using Orlop.Boat.Alterations;
using Orlop.Boat.Things;
using Orlop.Presentation.Views;
using Xunit;

namespace Orlop.Presentation.Tests.Views;

public sealed class RecordableWorkTests
{
    private static readonly DateOnly May = new(2026, 5, 1), June = new(2026, 6, 1);

    [Fact]
    public void Of_WhatIsUnderWay_StandsFirst_AndOfSeveralTheOneWorkedOnLast() => Assert.Equal(
        ["newer", "older", "waiting", "idea", "done"],
        Ids(Work("done", AlterationStatus.Built, June), Work("idea", AlterationStatus.Draft), Work("waiting", AlterationStatus.Accepted), Work("older", AlterationStatus.UnderWay, May), Work("newer", AlterationStatus.UnderWay, June)));

    [Fact]
    public void Of_AcceptedWorkWithATick_CountsAsUnderWay() => Assert.Equal(
        ["begun", "older", "waiting"],
        Ids(Work("waiting", AlterationStatus.Accepted), Work("older", AlterationStatus.UnderWay, May), Work("begun", AlterationStatus.Accepted, June)));

    [Fact]
    public void Of_DroppedOrEmpty_IsLeftOut() => Assert.Empty(Ids(Work("dropped", AlterationStatus.Dropped), Work("empty", AlterationStatus.UnderWay) with { Edits = [] }));

    private static string[] Ids(params Alteration[] work) => [.. RecordableWork.Of(new BoatModel { Things = [.. work] }).Select(alteration => alteration.Id)];

    private static Alteration Work(string id, AlterationStatus status, DateOnly? ticked = null) => new()
    {
        Id = id,
        Status = status,
        Edits = [BoatEdits.Add(new Gear { Id = $"gear-of-{id}" })],
        Ticks = ticked is { } day ? [new StepTick("fit:it", day)] : [],
    };
}
