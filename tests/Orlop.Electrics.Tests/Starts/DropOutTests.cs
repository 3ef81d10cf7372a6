using Orlop.Electrics.Networks;
using Orlop.Electrics.Starts;
using Xunit;
using static Orlop.Electrics.Tests.Starts.StartCircuits;

namespace Orlop.Electrics.Tests.Starts;

/// <summary>How low and for how long, against the closed form: below a limit until t = −(R_s + R) C ln(((V − limit)/R_s − I)/(V/(R_s + R) − I)).</summary>
public sealed class DropOutTests
{
    private static readonly StartingStore Winch = Motor(startRatio: 5, runningA: 30, startS: 1);

    private static readonly StartResult Start = StartStudy.Run(new StartInput
    {
        Network = Source(new Load("radio", "bar.+", "bar.-", LoadKind.Resistance, 1e6)),
        Stores = [Winch],
        HorizonS = 3,
        ToleranceV = 1e-3,
    });

    [Fact]
    public void LowestAndTimeBelow_AreThoseOfTheClosedForm()
    {
        const double LimitV = 21;
        double ohm = SourceOhm + Winch.SeriesOhm, firstA = (OpenV / ohm) - Winch.SinkA;
        double expectedS = -ohm * Winch.CapacitanceF * Math.Log((((OpenV - LimitV) / SourceOhm) - Winch.SinkA) / firstA);

        DropOut radio = DropOut.Of(Start, "radio", LimitV)!;

        Assert.Equal(OpenV - (SourceOhm * OpenV / ohm), radio.LowestV, 1e-4);
        Assert.Equal(0, radio.LowestAtS);
        Assert.Equal(expectedS, radio.BelowS, 0.002);
        Assert.True(radio.DropsOut);
        Assert.False(radio.IsBelowAtEnd);
    }

    [Fact]
    public void WhatBearsItLonger_DoesNotDropOut()
    {
        double belowS = DropOut.Of(Start, "radio", 21)!.BelowS;

        Assert.False(DropOut.Of(Start, "radio", 21, belowS + 0.01)!.DropsOut);
        Assert.True(DropOut.Of(Start, "radio", 21, belowS - 0.01)!.DropsOut);
    }

    [Fact]
    public void ALimitBelowTheLowest_IsNeverReached() => Assert.Equal((0.0, false), (DropOut.Of(Start, "radio", 15)!.BelowS, DropOut.Of(Start, "radio", 15)!.DropsOut));

    [Fact]
    public void ALimitAboveTheRunningVoltage_IsMissedToTheEnd()
    {
        DropOut radio = DropOut.Of(Start, "radio", 25)!;

        Assert.True(radio.IsBelowAtEnd && radio.DropsOut);
        Assert.Equal(3, radio.BelowS, 1e-9);
    }

    [Fact]
    public void WhatIsNotThere_OrALimitThatIsNone_TellsNothing()
    {
        Assert.Null(DropOut.Of(Start, "nothing", 21));
        Assert.Null(DropOut.Of(Start, "radio", double.NaN));
        Assert.Null(DropOut.Of(Start, "radio", 21, double.NaN));
    }
}
