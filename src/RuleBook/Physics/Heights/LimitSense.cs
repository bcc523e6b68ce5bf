namespace RuleBook.Physics.Heights;

/// <summary>On which side of a limit a value is allowed.</summary>
internal enum LimitSense
{
    /// <summary>The limit is the most that is allowed.</summary>
    AtMost,

    /// <summary>The limit is the least that is allowed.</summary>
    AtLeast,
}
