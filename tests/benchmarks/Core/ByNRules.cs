using System.Globalization;
using System.Linq.Dynamic.Core;
using System.Linq.Expressions;
using NRules;
using NRules.Fluent;
using RuleBook.Law;
using RuleBook.Tables;

namespace RuleBook.Benchmarks;

/// <summary>
/// The lines as a network of the package NRules; a job is put in, the rules that match are fired, and it is taken out again.
/// </summary>
internal sealed class ByNRules
{
    private readonly ISession session;
    private readonly Verdict verdict = new();

    public ByNRules()
    {
        var rules = Line.All.Select((line, at) => new LineRule(line, at.ToString(CultureInfo.InvariantCulture), verdict));
        session = new RuleCompiler().Compile(new RuleDefinitionFactory().Create(rules)).CreateSession();
    }

    public Outcome Judge(Job job)
    {
        verdict.Clear();
        session.Insert(job);
        session.Fire();
        session.Retract(job);
        return verdict.Outcome;
    }

    /// <summary>What the rules that fired have given.</summary>
    public sealed class Verdict
    {
        public Outcome Outcome { get; private set; }

        public void Clear() => Outcome = new(Pathway.NoCertificate, Pathway.NoCertificate);

        public void Add(Outcome outcome) => Outcome = Outcome.And(outcome);
    }

    private sealed class LineRule(Line line, string name, Verdict verdict) : NRules.Fluent.Dsl.Rule
    {
        public override void Define()
        {
            var when = (Expression<Func<Job, bool>>)DynamicExpressionParser.ParseLambda(typeof(Job), typeof(bool), line.When);
            var (given, to) = (line.Outcome, verdict);
            Job job = null!;
            Name(name);
            When().Match(() => job, when);
            Then().Do(_ => to.Add(given));
        }
    }
}
