using System.Collections.Immutable;
using RuleBook.Law;
using RuleBook.Text;

namespace RuleBook.Authoring.Inspecting;

/// <summary>What an inspection found.</summary>
/// <param name="Problems">In the order of file, line, column and code.</param>
/// <param name="Files">How many files were read.</param>
/// <param name="Digest">The book's digest.</param>
/// <param name="Book">The book as far as it could be read; use it only when <see cref="IsSound"/>.</param>
public sealed record InspectionReport(ImmutableArray<Problem> Problems, int Files, string Digest, Book? Book)
{
    /// <summary>Number of errors.</summary>
    public int Errors => Problems.Count(problem => problem.Severity == Severity.Error);

    /// <summary>Number of warnings.</summary>
    public int Warnings => Problems.Length - Errors;

    /// <summary>Whether the book can be used: no errors; warnings are allowed.</summary>
    public bool IsSound => Errors == 0;
}
