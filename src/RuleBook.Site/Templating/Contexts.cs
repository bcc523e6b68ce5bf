using System.Diagnostics.CodeAnalysis;
using Scriban;
using Scriban.Runtime;

namespace RuleBook.Site.Templating;

/// <summary>The one place that makes template contexts, with what the engine leaves open by default.</summary>
internal static class Contexts
{
    /// <summary>More turns of loops than any page takes; a template that runs away ends here.</summary>
    internal const int MostTurns = 2_000_000;

    // Templates name the key and the value of pairs, which native code would leave out.
    [DynamicDependency(DynamicallyAccessedMemberTypes.PublicProperties, typeof(KeyValuePair<string, string>))]
    public static TemplateContext Create(ScriptObject globals)
    {
        var context = new EscapingContext
        {
            StrictVariables = true,
            EnableRelaxedMemberAccess = false,
            EnableRelaxedTargetAccess = false,
            LoopLimit = MostTurns,
            NewLine = "\n",
        };
        context.PushGlobal(globals);
        return context;
    }
}
