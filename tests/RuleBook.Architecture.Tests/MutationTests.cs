using Microsoft.CodeAnalysis.CSharp;
using RuleBook.Mutants;

namespace RuleBook.Architecture.Tests;

/// <summary>What tests/mutants writes into the code, against the tables of C# operators by hand.</summary>
public sealed class MutationTests
{
    private static (string Code, string[] Told) Mutated(string code, Predicate<int>? wanted = null)
    {
        var rewriting = new Rewriting("a.cs", 1, wanted ?? (_ => true));
        var root = rewriting.Visit(CSharpSyntaxTree.ParseText(code, cancellationToken: TestContext.Current.CancellationToken).GetRoot())!;
        return (root.ToFullString().Replace(" ", "", StringComparison.Ordinal), [.. rewriting.Made.Select(mutant => mutant.Told)]);
    }

    [Theory]
    [InlineData("var x = a < b;", "<= for <: a < b")]
    [InlineData("var x = a == b;", "!= for ==: a == b")]
    [InlineData("var x = a - b;", "+ for -: a - b")]
    [InlineData("var x = -a;", "a for -a")]
    [InlineData("var x = true;", "false for true")]
    [InlineData("var x = a ?? b;", "b for a ?? b")]
    [InlineData("var x = all.First();", "Last for First: all.First()")]
    [InlineData("var x = all.Min(each => each.Size);", "Max for Min: all.Min(each => each.Size)")]
    [InlineData("var x = \"over\";", "\"\" for \"over\"")]
    [InlineData("Write(page);", "removed")]
    public void Each_kind_of_change_is_made_once(string code, string told) => Mutated(code).Told.ShouldBe([told]);

    [Fact]
    public void A_condition_is_met_always_and_never_and_its_parts_each_by_itself() =>
        Mutated("if (a && b) return;").Told.ShouldBe(["always: a", "always: b", "always: a && b", "never: a && b"]);

    [Fact]
    public void Every_text_between_the_holes_of_a_sentence_goes_by_itself() =>
        Mutated("var x = $\"{a} kg over {b}\";").Code.ShouldBe("varx=$\"{a}{(MutantSwitch.On(1)?(\"\"):(\"kgover\"))}{b}\";");

    [Theory]
    [InlineData("const string X = \"over\";")]
    [InlineData("[Name(\"over\")] class A { const int B = 1 + 2; enum C { D = 1 + 2 } }")]
    [InlineData("void A(string b = \"over\") { }")]
    [InlineData("var x = a is \"over\";")]
    [InlineData("switch (a) { case \"over\": break; }")]
    [InlineData("var x = new InvalidOperationException(\"over\");")]
    public void Where_only_a_constant_can_stand_nothing_is_changed(string code) => Mutated(code).Told.ShouldBeEmpty();

    [Fact]
    public void What_declares_a_name_is_not_written_twice_and_what_follows_a_question_mark_does_not_stand_alone() =>
        Mutated("var x = (a is { } b) == c; var y = d?.E.First();").Told.ShouldBeEmpty();

    [Fact]
    public void A_change_that_is_not_wanted_leaves_the_numbers_of_the_others()
    {
        var (code, told) = Mutated("var x = a + b; var y = c + d;", number => number == 2);
        code.ShouldBe("varx=a+b;vary=(MutantSwitch.On(2)?(c-d):(c+d));");
        told.Length.ShouldBe(1);
    }
}
