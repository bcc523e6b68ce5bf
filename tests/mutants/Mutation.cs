using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using static Microsoft.CodeAnalysis.CSharp.SyntaxFactory;

namespace RuleBook.Mutants;

/// <summary>One small change at a place in the code, behind a switch.</summary>
/// <param name="Told">What it does, for a reader.</param>
/// <param name="Made">The place with this change, from the switch and from the place in which the changes within it stand already.</param>
internal sealed record Mutation(string Told, Func<ExpressionSyntax, SyntaxNode, SyntaxNode> Made)
{
    private static readonly Dictionary<SyntaxKind, SyntaxKind> Operators = BothWays(
        (SyntaxKind.EqualsExpression, SyntaxKind.NotEqualsExpression),
        (SyntaxKind.LessThanExpression, SyntaxKind.LessThanOrEqualExpression),
        (SyntaxKind.GreaterThanExpression, SyntaxKind.GreaterThanOrEqualExpression),
        (SyntaxKind.AddExpression, SyntaxKind.SubtractExpression),
        (SyntaxKind.MultiplyExpression, SyntaxKind.DivideExpression)
    );

    private static readonly Dictionary<string, string> Methods = BothWays(
        ("First", "Last"),
        ("FirstOrDefault", "LastOrDefault"),
        ("Any", "All"),
        ("Min", "Max"),
        ("MinBy", "MaxBy"),
        ("OrderBy", "OrderByDescending"),
        ("ThenBy", "ThenByDescending"),
        ("Take", "Skip")
    );

    /// <summary>The changes tried at a place. Whether its types allow them is for the compiler to say.</summary>
    public static IEnumerable<Mutation> Of(SyntaxNode node) =>
        node switch
        {
            InterpolatedStringTextSyntax text => Emptied(text),
            LiteralExpressionSyntax literal => Literal(literal),
            ExpressionStatementSyntax { Expression: InvocationExpressionSyntax or AssignmentExpressionSyntax } or YieldStatementSyntax =>
            [
                Removed,
            ],
            ExpressionSyntax expression => [.. Decided(expression), .. Exchanged(expression)],
            _ => [],
        };

    private static Mutation Removed => new("removed", (on, now) => IfStatement(Not(on), (StatementSyntax)now));

    /// <summary>A hole in the place of the text: it stands in every kind of interpolated string, whoever takes it.</summary>
    private static IEnumerable<Mutation> Emptied(InterpolatedStringTextSyntax text)
    {
        // The token's value keeps the braces as they are written: twice.
        var said = text.TextToken.ValueText.Replace("{{", "{", StringComparison.Ordinal).Replace("}}", "}", StringComparison.Ordinal);
        yield return new($"without \"{said}\"", (on, _) => Interpolation(Choice(on, Text(""), Text(said))));
    }

    private static IEnumerable<Mutation> Literal(LiteralExpressionSyntax literal) =>
        literal.Kind() switch
        {
            SyntaxKind.StringLiteralExpression when literal.Token.ValueText is { Length: > 0 } said =>
            [
                new($"\"\" for \"{said}\"", (on, now) => Choice(on, Text(""), now)),
            ],
            SyntaxKind.StringLiteralExpression => [new("\"mutant\" for \"\"", (on, now) => Choice(on, Text("mutant"), now))],
            SyntaxKind.TrueLiteralExpression => [new("false for true", (on, _) => Parenthesised(Not(on)))],
            SyntaxKind.FalseLiteralExpression => [new("true for false", (on, _) => on)],
            _ => [],
        };

    /// <summary>A condition that is met always, and never. In a chain only what is not the same as for the whole chain.</summary>
    private static IEnumerable<Mutation> Decided(ExpressionSyntax expression)
    {
        if (expression is LiteralExpressionSyntax or ParenthesizedExpressionSyntax || !IsCondition(expression, out var around))
            yield break;
        if (
            !around.IsKind(SyntaxKind.LogicalOrExpression)
            && expression is not IsPatternExpressionSyntax { Pattern: VarPatternSyntax } // which only names, and always holds
            && around is not (WhileStatementSyntax or DoStatementSyntax or ForStatementSyntax)
        )
            yield return new(
                $"always: {expression}",
                (on, now) => Parenthesised(BinaryExpression(SyntaxKind.LogicalOrExpression, Parenthesised(now), on))
            );
        if (!around.IsKind(SyntaxKind.LogicalAndExpression))
            yield return new(
                $"never: {expression}",
                (on, now) => Parenthesised(BinaryExpression(SyntaxKind.LogicalAndExpression, Parenthesised(now), Not(on)))
            );
    }

    private static bool IsCondition(ExpressionSyntax expression, out SyntaxNode around)
    {
        around = expression.Parent!;
        while (around is ParenthesizedExpressionSyntax { Parent: { } further })
            around = further;
        return around switch
        {
            BinaryExpressionSyntax binary => binary.Kind() is SyntaxKind.LogicalAndExpression or SyntaxKind.LogicalOrExpression,
            ConditionalExpressionSyntax choice => choice.Condition.Span.Contains(expression.Span),
            IfStatementSyntax or WhileStatementSyntax or DoStatementSyntax or WhenClauseSyntax => true,
            ForStatementSyntax loop => loop.Condition == expression,
            LambdaExpressionSyntax or ArrowExpressionClauseSyntax or ReturnStatementSyntax => IsTruth(expression),
            _ => false,
        };
    }

    /// <summary>Known by its form to be true or false.</summary>
    private static bool IsTruth(ExpressionSyntax expression) =>
        expression is IsPatternExpressionSyntax or PrefixUnaryExpressionSyntax { RawKind: (int)SyntaxKind.LogicalNotExpression }
        || expression.Kind()
            is SyntaxKind.LogicalAndExpression
                or SyntaxKind.LogicalOrExpression
                or SyntaxKind.IsExpression
                or SyntaxKind.EqualsExpression
                or SyntaxKind.NotEqualsExpression
                or SyntaxKind.LessThanExpression
                or SyntaxKind.LessThanOrEqualExpression
                or SyntaxKind.GreaterThanExpression
                or SyntaxKind.GreaterThanOrEqualExpression;

    /// <summary>One thing for another. What declares a name within cannot stand twice.</summary>
    private static IEnumerable<Mutation> Exchanged(ExpressionSyntax expression)
    {
        // Nor does what follows a question mark stand by itself.
        if (
            expression.DescendantNodes().Any(node => node is VariableDesignationSyntax)
            || expression.GetFirstToken().IsKind(SyntaxKind.DotToken)
        )
            yield break;
        switch (expression)
        {
            case BinaryExpressionSyntax { RawKind: (int)SyntaxKind.CoalesceExpression } binary:
                yield return new($"{binary.Right} for {binary}", (on, now) => Choice(on, binary.Right, now));
                break;
            case BinaryExpressionSyntax binary when Operators.TryGetValue(binary.Kind(), out var other):
                // Always and never have said as much of an equality that decides, and which of two is taken where they are equal is all
                // one.
                if (
                    binary.Kind() is SyntaxKind.EqualsExpression or SyntaxKind.NotEqualsExpression && IsCondition(binary, out _)
                    || TakesGreater(binary)
                )
                    yield break;
                var exchanged = BinaryExpression(other, binary.Left, binary.Right);
                yield return new(
                    $"{exchanged.OperatorToken} for {binary.OperatorToken}: {binary}",
                    (on, now) => Choice(on, exchanged, now)
                );
                break;
            case InvocationExpressionSyntax { Expression: MemberAccessExpressionSyntax { Name: IdentifierNameSyntax name } } call
                when Methods.TryGetValue(name.Identifier.ValueText, out var instead):
                var renamed = call.ReplaceNode(name, IdentifierName(instead));
                yield return new($"{instead} for {name}: {call}", (on, now) => Choice(on, renamed, now));
                break;
            case PrefixUnaryExpressionSyntax { RawKind: (int)SyntaxKind.UnaryMinusExpression } minus:
                yield return new($"{minus.Operand} for {minus}", (on, now) => Choice(on, minus.Operand, now));
                break;
        }
    }

    /// <summary>Whether a comparison takes the greater or the lesser of its two sides.</summary>
    private static bool TakesGreater(BinaryExpressionSyntax binary) =>
        binary.Parent is ConditionalExpressionSyntax choice
        && choice.Condition == binary
        && new[] { $"{binary.Left}", $"{binary.Right}" }
            .Order()
            .SequenceEqual(new[] { $"{choice.WhenTrue}", $"{choice.WhenFalse}" }.Order());

    private static LiteralExpressionSyntax Text(string text) =>
        LiteralExpression(SyntaxKind.StringLiteralExpression, SyntaxFactory.Literal(text));

    private static PrefixUnaryExpressionSyntax Not(ExpressionSyntax on) => PrefixUnaryExpression(SyntaxKind.LogicalNotExpression, on);

    private static ParenthesizedExpressionSyntax Parenthesised(SyntaxNode node) => ParenthesizedExpression((ExpressionSyntax)node);

    private static ParenthesizedExpressionSyntax Choice(ExpressionSyntax on, SyntaxNode changed, SyntaxNode now) =>
        Parenthesised(ConditionalExpression(on, Parenthesised(changed), Parenthesised(now)));

    private static Dictionary<T, T> BothWays<T>(params (T, T)[] pairs)
        where T : notnull => pairs.Concat(pairs.Select(pair => (pair.Item2, pair.Item1))).ToDictionary();
}
