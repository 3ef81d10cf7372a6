namespace Orlop.Boat.Format;

/// <summary>What a field holds; decides how it is read, written, asked for and shown.</summary>
public enum FieldType
{
    /// <summary>Own id of a thing, a core or an edit.</summary>
    Id,

    /// <summary>A number with how well it is known.</summary>
    Quantity,

    /// <summary>A plain number.</summary>
    Number,

    /// <summary>A whole number.</summary>
    Count,

    /// <summary>Words.</summary>
    Text,

    /// <summary>Yes or no.</summary>
    Flag,

    /// <summary>One of a closed list.</summary>
    Choice,

    /// <summary>Id of another thing.</summary>
    Reference,

    /// <summary>A terminal, <c>part.terminal</c>.</summary>
    Terminal,

    /// <summary>A point in the boat.</summary>
    Place,

    /// <summary>Size of a box.</summary>
    Box,

    /// <summary>A day.</summary>
    Date,

    /// <summary>A small record of its own fields.</summary>
    Record,

    /// <summary>A list; its items have a type of their own.</summary>
    List,

    /// <summary>A whole thing, inside an edit.</summary>
    Thing,
}
