namespace RuleBook.Text;

/// <summary>How bad a problem is.</summary>
public enum Severity
{
    /// <summary>The input stands, but somebody should look.</summary>
    Warning,

    /// <summary>The input cannot be used.</summary>
    Error,
}

/// <summary>Something wrong in an input: where, what, and what would be right.</summary>
/// <param name="Code">The check that found it: a word with hyphens, stable.</param>
/// <param name="Severity">Warning or error.</param>
/// <param name="Mark">Where.</param>
/// <param name="Text">What is wrong.</param>
/// <param name="Tip">What would be right.</param>
public sealed record Problem(string Code, Severity Severity, Mark Mark, string Text, string Tip)
{
    /// <summary>An error.</summary>
    public static Problem Error(string code, Mark mark, string text, string tip) => new(code, Severity.Error, mark, text, tip);

    /// <summary>A warning.</summary>
    public static Problem Warning(string code, Mark mark, string text, string tip) => new(code, Severity.Warning, mark, text, tip);

    /// <summary><c>file:line:column: error code: text (tip)</c>, one line in which everything is <see cref="Visible"/>.</summary>
    public override string ToString() =>
        $"{Visible.Of($"{Mark}")}: {(Severity == Severity.Error ? "error" : "warning")} {Code}: "
        + $"{Visible.Of(Text)}{(Tip.Length > 0 ? $" ({Visible.Of(Tip)})" : "")}";
}

/// <summary>An input could not be read; <see cref="Problems"/> says where and why.</summary>
public sealed class InputException : Exception
{
    /// <summary>At least one problem.</summary>
    public IReadOnlyList<Problem> Problems { get; } = [];

    /// <summary>With the problems found.</summary>
    public InputException(IReadOnlyList<Problem> problems)
        : base(string.Join(Environment.NewLine, problems)) => Problems = problems;

    /// <summary>With one problem.</summary>
    public InputException(Problem problem)
        : this([problem]) { }

    /// <inheritdoc/>
    public InputException() { }

    /// <inheritdoc/>
    public InputException(string message)
        : base(message) { }

    /// <inheritdoc/>
    public InputException(string message, Exception innerException)
        : base(message, innerException) { }
}
