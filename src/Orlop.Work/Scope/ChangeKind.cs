namespace Orlop.Work.Scope;

/// <summary>What an edit means for the hands.</summary>
internal enum ChangeKind
{
    /// <summary>A part, way or piece of gear is fitted.</summary>
    Fit,

    /// <summary>It goes elsewhere.</summary>
    Move,

    /// <summary>It is exchanged for another, or set otherwise.</summary>
    Exchange,

    /// <summary>It is taken out.</summary>
    Remove,

    /// <summary>A cable is run and connected.</summary>
    Cable,

    /// <summary>A cable stays and its ends are made anew.</summary>
    Ends,

    /// <summary>A bolted link is made or made anew.</summary>
    Link,

    /// <summary>Only what is known or planned changes; nothing is done with hands.</summary>
    Record,
}
