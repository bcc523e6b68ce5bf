using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using static Microsoft.CodeAnalysis.CSharp.SyntaxFactory;

namespace RuleBook.Mutants;

/// <summary>Writes the changes of a file into it, each behind a switch with its number, so that one build holds them all.</summary>
/// <param name="file">The file, as told.</param>
/// <param name="first">The number of the first change.</param>
/// <param name="wanted">Which numbers are written; the others are only counted.</param>
internal sealed class Rewriting(string file, int first, Predicate<int> wanted) : CSharpSyntaxRewriter
{
    /// <summary>Marks a rewritten place, with the number of its change.</summary>
    public const string Mark = "mutant";

    private readonly List<Mutant> made = [];
    private int next = first;

    /// <summary>The mutants that the file has.</summary>
    public IReadOnlyList<Mutant> Made => made;

    /// <summary>The number after the last.</summary>
    public int Next => next;

    public override SyntaxNode? Visit(SyntaxNode? node)
    {
        if (node is null || IsFixed(node))
            return node;
        var now = base.Visit(node)!;
        foreach (var mutation in Mutation.Of(node))
        {
            var number = next++;
            if (!wanted(number))
                continue;
            made.Add(new(number, file, node.GetLocation().GetLineSpan().StartLinePosition.Line + 1, mutation.Told));
            now = mutation.Made(On(number), now).WithAdditionalAnnotations(new SyntaxAnnotation(Mark, $"{number}"));
        }

        return now;
    }

    /// <summary>Where only a constant may stand no switch can, and what is thrown at a programmer no one else reads.</summary>
    private static bool IsFixed(SyntaxNode node) =>
        node is AttributeListSyntax or PatternSyntax or SwitchLabelSyntax or ParameterSyntax or EnumMemberDeclarationSyntax
        || node is FieldDeclarationSyntax field && field.Modifiers.Any(SyntaxKind.ConstKeyword)
        || node is LocalDeclarationStatementSyntax { IsConst: true }
        || node is ObjectCreationExpressionSyntax { Type: IdentifierNameSyntax { Identifier.ValueText: var type } }
            && type.EndsWith("Exception", StringComparison.Ordinal);

    private static InvocationExpressionSyntax On(int number) =>
        InvocationExpression(
            MemberAccessExpression(SyntaxKind.SimpleMemberAccessExpression, IdentifierName(MutatedProject.Switch), IdentifierName("On")),
            ArgumentList(
                SingletonSeparatedList(Argument(LiteralExpression(SyntaxKind.NumericLiteralExpression, SyntaxFactory.Literal(number))))
            )
        );
}
