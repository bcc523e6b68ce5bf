using System.Text;
using RuleBook.Text;

namespace RuleBook.Yaml.Tests;

/// <summary>What is refused, where it is said to be, and that nothing but an <see cref="InputException"/> ever comes out.</summary>
public sealed class YamlRefusalTests
{
    [Theory]
    [InlineData("a: 1\na: 2", "2:1 duplicate-key")] // YAML 1.2.2, 3.2.1.1: keys are unique
    [InlineData("{a: 1, b: 2, a: 3}", "1:14 duplicate-key")]
    [InlineData("a: &x 1", "1:4 anchor-or-alias")]
    [InlineData("a: 1\nb: *x", "2:4 anchor-or-alias")]
    [InlineData("a: !!str 1", "1:4 tag")]
    [InlineData("a: ! 1", "1:4 tag")]
    [InlineData("a: 1\n---\nb: 2", "2:1 several-documents")]
    [InlineData("? [a, b]\n: 1", "1:3 key-not-a-word")]
    [InlineData("a:\n\tb: 1", "2:1 tab-indentation")] // YAML 1.2.2, 6.1: no tabs in indentation
    [InlineData("a: b: c", "1:5 yaml-syntax")]
    [InlineData("a: [1, 2", "1:4 yaml-syntax")]
    [InlineData("a: \"open", "1:4 yaml-syntax")]
    [InlineData("a: @b", "1:4 yaml-syntax")]
    [InlineData("", "1:1 empty-input")]
    [InlineData("# only a comment\n", "1:1 empty-input")]
    [InlineData("a: x\u0007y", "1:5 control-character")] // YAML 1.2.2, 5.1
    [InlineData("a: \"x\\ey\"", "1:4 control-character")]
    public void What_cannot_be_read_is_refused_where_it_stands(string text, string expected)
    {
        var problem = Refused(() => YamlText.Read(text, "f"));

        $"{problem.Mark.Line}:{problem.Mark.Column} {problem.Code}".ShouldBe(expected);
    }

    [Fact]
    public void Half_of_a_surrogate_pair_is_refused() => // YAML 1.2.2, 5.1: the surrogate block is excluded
        Refused(() => YamlText.Read("a: " + (char)0xD800, "f")).Code.ShouldBe("control-character");

    [Fact]
    public void A_duplicate_key_names_the_place_of_the_first() =>
        Refused(() => YamlText.Read("a: 1\nb: 2\na: 3", "f")).Text.ShouldContain("line 1, column 1");

    [Fact]
    public void Bytes_that_are_not_utf_8_are_refused_where_they_begin() // RFC 3629: 0xFF never occurs
    {
        var problem = Refused(() => YamlText.Read([(byte)'a', (byte)':', (byte)'\n', (byte)' ', 0xFF], "f"));

        problem.Code.ShouldBe("not-utf-8");
        (problem.Mark.Line, problem.Mark.Column).ShouldBe((2, 2));
    }

    [Theory]
    [InlineData("[", "]")]
    [InlineData("{a: ", "}")]
    [InlineData("- ", "")]
    [InlineData("? ", "")]
    public void Ten_thousand_levels_are_refused_without_overflowing_the_stack(string open, string close)
    {
        var text = string.Concat(Enumerable.Repeat(open, 10_000)) + "1" + string.Concat(Enumerable.Repeat(close, 10_000));

        Refused(() => YamlText.Read(text, "f")).Code.ShouldBeOneOf("nested-too-deep", "yaml-syntax");
    }

    [Fact]
    public void The_deepest_nesting_allowed_is_read_and_one_more_is_not()
    {
        static string Nested(int depth) => new string('[', depth) + new string(']', depth);

        YamlText.Read(Nested(YamlText.DeepestNesting), "f").ShouldBeOfType<Sequence>();
        Refused(() => YamlText.Read(Nested(YamlText.DeepestNesting + 1), "f")).Code.ShouldBe("nested-too-deep");
    }

    [Fact]
    public void The_largest_input_allowed_is_read_and_one_byte_more_is_not()
    {
        var largest = Encoding.UTF8.GetBytes("a: " + new string('x', YamlText.LargestInput - 3));

        YamlText.Read(largest, "f").ShouldBeOfType<Mapping>();
        Refused(() => YamlText.Read([.. largest, (byte)'x'], "f")).Code.ShouldBe("too-large");
        Refused(() => YamlText.Read(new MemoryStream([.. largest, (byte)'x']), "f")).Code.ShouldBe("too-large");
    }

    [Fact]
    public void A_file_of_a_hundred_megabytes_is_refused_without_being_read()
    {
        var path = Path.GetTempFileName();
        try
        {
            using (var file = File.OpenWrite(path))
                file.SetLength(100_000_000);
            var before = GC.GetAllocatedBytesForCurrentThread();
            Refused(() => YamlText.ReadFile(path, "big.yaml")).Code.ShouldBe("too-large");
            (GC.GetAllocatedBytesForCurrentThread() - before).ShouldBeLessThan(200_000);
        }
        finally
        {
            File.Delete(path);
        }
    }

    [Fact]
    public void A_file_that_is_not_there_is_a_problem_and_no_exception_of_the_system() =>
        Refused(() => YamlText.ReadFile("/no/such/file.yaml")).Code.ShouldBe("no-file");

    [Fact]
    public void Damaged_texts_give_nodes_or_problems_and_nothing_else()
    {
        const string sound = "# c\na: {b: [1, \"t\\n\", 'q'], c: >\n    x\n   y}\nd:\n  - e: |\n      z\n  - 2 mm\n? f\n: g\n";
        const string alphabet = "{}[]:,-?&*!|>'\"%@`# \n\t\\x0aé\u2028<=~";
        var random = new Random(20261125);
        for (var round = 0; round < 20_000; round++)
        {
            var text = new StringBuilder(sound);
            for (var damage = random.Next(1, 6); damage > 0; damage--)
                _ =
                    random.Next(2) == 0
                        ? text.Insert(random.Next(text.Length), alphabet[random.Next(alphabet.Length)])
                        : text.Remove(random.Next(text.Length - 1), 1);
            try
            {
                YamlText.Read(text.ToString(), "f");
            }
            catch (InputException refusal)
            {
                refusal.Problems.ShouldHaveSingleItem().Mark.Line.ShouldBeGreaterThan(0);
            }
        }
    }

    private static Problem Refused(Func<Node> reading) => Should.Throw<InputException>(reading).Problems.ShouldHaveSingleItem();
}
