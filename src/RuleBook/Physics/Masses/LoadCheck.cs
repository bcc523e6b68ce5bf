using Fractions;

namespace RuleBook.Physics.Masses;

/// <summary>A mass held against the most that it may be.</summary>
/// <param name="Subject">Id of what is compared with what: <c>gvm</c>, <c>front-axle</c>, <c>front-axle-tyres</c>, <c>gcm</c>, <c>ball</c>, ...</param>
/// <param name="What">What is compared, in words, naming the rating.</param>
/// <param name="ValueKg">The mass as it is, kg.</param>
/// <param name="LimitKg">The most that it may be, kg; reached is still within.</param>
/// <param name="LimitFact">The path in the job that states the limit.</param>
public sealed record LoadCheck(string Subject, string What, Fraction ValueKg, Fraction LimitKg, string LimitFact)
{
    /// <summary>What is left, kg; negative when the limit is passed.</summary>
    public Fraction MarginKg => LimitKg - ValueKg;

    /// <summary>True when the limit is not passed.</summary>
    public bool Holds => ValueKg <= LimitKg;
}
