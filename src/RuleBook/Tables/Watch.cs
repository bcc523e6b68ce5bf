namespace RuleBook.Tables;

/// <summary>Told which columns kept a test open, so that a completion tries those and no others.</summary>
internal interface IWatch
{
    /// <summary>Whether it wants to be told.</summary>
    static abstract bool Watches { get; }

    /// <summary>A column on which an answer hangs that is not known yet.</summary>
    void Add(int column);
}

/// <summary>Wants to know nothing: judging costs no more for it.</summary>
internal struct NoWatch : IWatch
{
    public static bool Watches => false;

    public readonly void Add(int column) { }
}

/// <summary>Notices whether an answer hangs on anything that could become known.</summary>
internal struct AnyWatch : IWatch
{
    public static bool Watches => true;

    /// <summary>Whether it does.</summary>
    public bool Found { get; private set; }

    public void Add(int column) => Found |= column != 0;
}

/// <summary>Collects the openings on which an answer hangs.</summary>
/// <param name="openings">By column, the openings that bear on it, a bit each.</param>
internal ref struct OpeningWatch(ReadOnlySpan<ulong> openings) : IWatch
{
    private readonly ReadOnlySpan<ulong> openings = openings;

    public static bool Watches => true;

    /// <summary>The openings, a bit each.</summary>
    public ulong Found { get; private set; }

    public void Add(int column) => Found |= openings[column];
}
