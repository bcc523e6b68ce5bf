using Fractions;

namespace RuleBook.Physics.Masses;

/// <summary>A mass held against the most that it may be.</summary>
/// <param name="Subject">
/// Id of what is compared with what: <c>gvm</c>, <c>front-axle</c>, <c>front-axle-tyres</c>, <c>gcm</c>, <c>ball</c>, ...
/// </param>
/// <param name="What">What is compared, in words, naming the rating.</param>
/// <param name="ValueKg">The mass as it is, kg.</param>
/// <param name="LimitKg">The most that it may be, kg; reached is still within.</param>
/// <param name="LimitFact">The path in the job that states the limit.</param>
public sealed record LoadCheck(string Subject, string What, Fraction ValueKg, Fraction LimitKg, string LimitFact)
{
    /// <summary>Whether the mass is known, or only that it is no less or no more.</summary>
    public Known Known { get; init; }

    /// <summary>Width of the guard band of a weighed mass on each side of the limit, kg; zero where nothing was weighed.</summary>
    public Fraction GuardKg { get; init; }

    /// <summary>The weighing cannot tell on which side of the limit the mass is (guard band of JCGM 106:2012).</summary>
    public bool TooClose => -MarginKg > -GuardKg && -MarginKg <= GuardKg && GuardKg.IsPositive;

    /// <summary>What is left, kg; negative when the limit is passed.</summary>
    public Fraction MarginKg => LimitKg - ValueKg;

    /// <summary>True when the limit is not passed.</summary>
    public bool Holds => ValueKg <= LimitKg;
}

/// <summary>How well a mass is known.</summary>
public enum Known
{
    /// <summary>To the figure given.</summary>
    Exactly,

    /// <summary>It is that much or more: part of it is not known.</summary>
    AtLeast,

    /// <summary>It is that much or less.</summary>
    AtMost,
}
