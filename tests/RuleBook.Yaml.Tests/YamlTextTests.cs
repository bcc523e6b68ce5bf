using System.Text;
using RuleBook.Text;

namespace RuleBook.Yaml.Tests;

/// <summary>Reading against the YAML 1.2.2 specification (clauses named) and RFC 8259 for JSON.</summary>
public sealed class YamlTextTests
{
    [Fact]
    public void Every_node_knows_its_line_and_column_from_one()
    {
        var root = (Mapping)YamlText.Read("a: 1\nb:\n  - x\n  - { c: 50 mm }\n", "f.yaml");

        root.Mark.ShouldBe(new Mark("f.yaml", 1, 1));
        root.Entries[1].Key.Mark.ShouldBe(new Mark("f.yaml", 2, 1));
        var list = (Sequence)root.Find("b")!;
        list.Items[0].Mark.ShouldBe(new Mark("f.yaml", 3, 5));
        ((Mapping)list.Items[1]).Find("c").ShouldBe(new Scalar("50 mm", new Mark("f.yaml", 4, 10)));
    }

    [Theory]
    [InlineData("{\"a\": [1, \"two\", null, true], \"b\": {\"c\": \"\\u00e9\"}}")] // RFC 8259
    [InlineData("a: [1, two, ~, true]\nb: {c: é}")]
    [InlineData("a:\n- 1\n- 'two'\n-\n- true\nb:\n  c: \"\\xe9\"\n")] // YAML 1.2.2, 5.7 escapes
    public void Json_and_both_styles_of_yaml_give_the_same_words(string text)
    {
        var root = (Mapping)YamlText.Read(text, "f");

        ((Sequence)root.Find("a")!).Items.Cast<Scalar>().Select(item => item.Text).ShouldBe(["1", "two", "", "true"]);
        ((Scalar)((Mapping)root.Find("b")!).Find("c")!).Text.ShouldBe("é");
    }

    [Fact]
    public void A_quoted_null_is_a_word_and_a_plain_one_is_nothing()
    {
        ((Scalar)YamlText.Read("'null'", "f")).Text.ShouldBe("null");
        ((Scalar)YamlText.Read("null", "f")).Text.ShouldBe(""); // YAML 1.2.2, 10.2.1.1
    }

    [Fact]
    public void A_byte_order_mark_is_passed_over() // YAML 1.2.2, 5.2
    {
        byte[] bytes = [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes("a: 1")];

        ((Mapping)YamlText.Read(bytes, "f")).Entries[0].Key.ShouldBe(new Scalar("a", new Mark("f", 1, 1)));
    }

    [Fact]
    public void A_folded_text_is_one_line() => // YAML 1.2.2, 8.1.3
        ((Scalar)((Mapping)YamlText.Read("note: >\n  one\n  two\n", "f")).Find("note")!).Text.ShouldBe("one two\n");
}
