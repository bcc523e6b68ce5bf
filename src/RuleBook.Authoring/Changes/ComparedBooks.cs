namespace RuleBook.Authoring.Changes;

/// <summary>Two books and what changes from one to the other.</summary>
/// <param name="Old">The old book.</param>
/// <param name="New">The new book.</param>
/// <param name="Report">Which answers change.</param>
/// <param name="Jobs">Which saved jobs change; null when none were asked for.</param>
public sealed record ComparedBooks(NamedBook Old, NamedBook New, ChangeReport Report, JobReport? Jobs)
{
    /// <summary>Whether some answer, or what stands beside it, changes.</summary>
    public bool Changes => !Report.IsEmpty || Jobs is { Changed.IsEmpty: false };
}

/// <summary>A book as it was named.</summary>
/// <param name="Name">Its folder or revision.</param>
/// <param name="Digest">Its digest.</param>
public sealed record NamedBook(string Name, string Digest);
