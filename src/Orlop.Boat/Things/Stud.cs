using System.ComponentModel;
using Orlop.Boat.Values;

namespace Orlop.Boat.Things;

/// <summary>What a terminal's rings are bolted to: a stud that stands out, or a thread inside that a bolt goes into.</summary>
public enum StudMeans { Stud, Insert }

/// <summary>What keeps a nut or bolt from working loose; it lies over the rings and the plain washer.</summary>
public enum StudLocking { SpringWasher, ToothedWasher, LockNut, FlangeNut }

/// <summary>A terminal's stud or insert and what is on it, from the face outward: rings, plain washer, locking, nut.</summary>
/// <param name="Terminal">Name of the terminal.</param>
/// <param name="SizeMm">Thread, 8 for M8.</param>
/// <param name="Means">A stud, or a thread inside.</param>
/// <param name="Locking">What keeps it from working loose.</param>
/// <param name="HasWasherUnder">Something lies between the face and the rings, or between two rings.</param>
/// <param name="TorqueNm">How tight, by its maker.</param>
public sealed record Stud(
    [property: Description("Name of the terminal: +, -, in, out, bar.")] string Terminal,
    [property: Description("Thread: 8 for M8."), Allowed(2, 16)] double SizeMm,
    [property: Description("A stud that stands out, or a thread inside that a bolt goes into.")] StudMeans Means = StudMeans.Stud,
    [property: Description("What keeps it from working loose; it lies over the rings and the plain washer.")] StudLocking? Locking = null,
    [property: Description("A washer lies between the face and the rings, or between two rings: the current then goes through it.")] bool? HasWasherUnder = null,
    [property: Description("How tight, by its maker."), Allowed(0.1, 200)] Quantity? TorqueNm = null);
