namespace RuleBook.Authoring.Pinning;

/// <summary>How a job can feel that rules are changed, from not at all upward.</summary>
internal enum Felt
{
    /// <summary>Neither as they were nor as they are now do they bind the vehicle.</summary>
    Nothing,

    /// <summary>
    /// They bind it and give the same, by the same tiers with the same conditions; how far it lies from a limit may differ.
    /// </summary>
    Bound,

    /// <summary>The pathways are the same; the tiers that hold, or their conditions and codes, may differ.</summary>
    Told,

    /// <summary>Other pathways may come of it.</summary>
    Otherwise,
}
