using System.Xml.Linq;

namespace RuleBook.Site.Templating;

/// <summary>Markup that was made by a template or as a tree, and is not escaped again.</summary>
internal sealed record Html(string Text)
{
    public static Html Of(XElement tree) => new(tree.ToString(SaveOptions.DisableFormatting));

    public override string ToString() => Text;
}
