using System.Globalization;
using NJsonSchema;
using NJsonSchema.Validation;
using RuleBook.Text;

namespace RuleBook.Authoring.Schemas;

/// <summary>Says what the validator found in the maintainer's words and at its place; the codes are those of the binder.</summary>
internal sealed class SchemaProblems(Tokens tokens, Node root)
{
    /// <summary>The problem, or null where another error says the same better.</summary>
    internal Problem? Of(ValidationError error)
    {
        var node = tokens.Find(error.Token) ?? root;
        return error.Kind switch
        {
            ValidationErrorKind.NoAdditionalPropertiesAllowed => UnknownKey(error, node),
            ValidationErrorKind.PropertyRequired => node is Mapping ? MissingKey(error, node) : null,
            ValidationErrorKind.NotInEnumeration => NotAWord(error.Schema, node),
            ValidationErrorKind.PatternMismatch => NotTheForm(error.Schema, node),
            ValidationErrorKind.StringTooLong => At("not-well-formed", node, "the text is too long", Most(error.Schema.MaxLength)),
            ValidationErrorKind.TooFewItems => At("wrong-shape", node, "the list is too short", Least(error.Schema.MinItems)),
            ValidationErrorKind.TooManyItems => At("wrong-shape", node, "the list is too long", Most(error.Schema.MaxItems)),
            ValidationErrorKind.ItemsNotUnique => At("wrong-shape", node, "an entry of the list is given twice", "keep one of them"),
            ValidationErrorKind.TooFewProperties => At("wrong-shape", node, "there are too few keys", Least(error.Schema.MinProperties)),
            ValidationErrorKind.TooManyProperties => At("wrong-shape", node, "there are too many keys", Most(error.Schema.MaxProperties)),
            _ => At("wrong-shape", node, Needed(error.Schema, node), Describe(error.Schema)),
        };
    }

    private Problem UnknownKey(ValidationError error, Node node)
    {
        var key = error.Property ?? "";
        var tip = Spelling.Tip(key, [.. error.Schema.ActualProperties.Keys]);
        return Problem.Error("unknown-key", tokens.FindKey(error.Token) ?? node.Mark, $"'{key}' is not a key here", tip);
    }

    private static Problem MissingKey(ValidationError error, Node node) =>
        At("missing-key", node, $"the key '{error.Property}' is missing", $"add '{error.Property}:'");

    private static Problem NotAWord(JsonSchema schema, Node node)
    {
        string[] words = [.. schema.Enumeration.OfType<string>().Where(word => word is not ("true" or "false"))];
        return At(
            "not-a-word",
            node,
            $"'{Written(node)}' is not one of {string.Join(", ", words)}",
            Spelling.NearestTip(Written(node), words)
        );
    }

    private static Problem NotTheForm(JsonSchema schema, Node node) =>
        At("not-well-formed", node, $"'{Written(node)}' does not have the form that is needed here", Describe(schema));

    private static string Needed(JsonSchema schema, Node node) =>
        (node, schema.Type) switch
        {
            (Scalar { Text: "" }, _) => "a value is needed here",
            (_, var type) when type.HasFlag(JsonObjectType.Object) && type.HasFlag(JsonObjectType.String) =>
                "a word or keys with values are needed here",
            (_, var type) when type.HasFlag(JsonObjectType.Object) => "keys with values are needed here",
            (_, var type) when type.HasFlag(JsonObjectType.Array) => "a list is needed here",
            _ => "a text is needed here",
        };

    private static string Describe(JsonSchema schema) => schema.Description ?? schema.ActualSchema.Description ?? "";

    private static string Written(Node node) => node is Scalar scalar ? scalar.Text : "";

    private static string Least(int count) => string.Create(CultureInfo.InvariantCulture, $"at least {count}");

    private static string Most(int? count) => string.Create(CultureInfo.InvariantCulture, $"at most {count}");

    private static Problem At(string code, Node node, string text, string tip) => Problem.Error(code, node.Mark, text, tip);
}
