using System.Collections.Immutable;
using Orlop.Boat.Values;

namespace Orlop.Work.Ends;

/// <summary>What lies on one stud when all is bolted on.</summary>
/// <param name="At">The terminal.</param>
/// <param name="Where">The terminal in words.</param>
/// <param name="ThreadMm">Thread, 8 for M8; null where neither the stud nor a ring tells it.</param>
/// <param name="Layers">From the face outward: links, rings by falling current, washer, locking, nut or bolt.</param>
/// <param name="Torque">How tight; null where neither maker nor table tells it.</param>
public sealed record EndStack(Terminal At, string Where, double? ThreadMm, ImmutableArray<string> Layers, TerminalTorque? Torque);
