using System.Text;
using System.Text.Encodings.Web;
using System.Text.Unicode;
using Scriban;
using Scriban.Parsing;

namespace RuleBook.Site.Templating;

/// <summary>A template context that escapes whatever an expression writes, save markup that a template or a tree made.</summary>
internal sealed class EscapingContext : TemplateContext
{
    private static readonly HtmlEncoder Escape = HtmlEncoder.Create(UnicodeRanges.All);

    public override TemplateContext Write(SourceSpan span, object? textAsObject)
    {
        if (textAsObject is null)
            return this;
        return Write(textAsObject is Html trusted ? trusted.Text : Escape.Encode(ObjectToString(textAsObject) ?? ""));
    }

    /// <summary>Bytes that a text takes once it is written.</summary>
    public static long Size(string text) => Encoding.UTF8.GetByteCount(Escape.Encode(text));
}
