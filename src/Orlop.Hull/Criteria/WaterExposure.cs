namespace Orlop.Hull.Criteria;

/// <summary>Waters of a route as 46 CFR parts them.</summary>
public enum WaterExposure
{
    /// <summary>Open sea, more than 20 nautical miles from a harbour of refuge (definition from memory).</summary>
    Exposed,

    /// <summary>Within 20 nautical miles of a harbour of refuge, and large sheltered waters (definition from memory).</summary>
    PartiallyProtected,

    /// <summary>Sheltered waters without special hazards.</summary>
    Protected,
}
