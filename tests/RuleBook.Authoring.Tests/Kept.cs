namespace RuleBook.Authoring.Tests;

/// <summary>
/// What is read once and kept for all tests. Mutation testing keeps the process from one mutant to the next and says in a file which one is
/// active: then it is read anew for each mutant, and at each use while it is found out what each test reaches.
/// </summary>
internal sealed class Kept<T>(Func<T> read)
    where T : class
{
    private static readonly string? MutantFile = Environment.GetEnvironmentVariable("STRYKER_MUTANT_FILE");
    private static readonly bool FindingReach = Environment.GetEnvironmentVariable("STRYKER_COVERAGE_EPOCH_FILE") is not null;
    private readonly Lock gate = new();
    private (int Mutant, T Value)? kept;

    public T Value
    {
        get
        {
            if (FindingReach)
                return read();
            var mutant = ActiveMutant();
            lock (gate)
            {
                if (kept is not { } have || have.Mutant != mutant)
                    kept = have = (mutant, read());
                return have.Value;
            }
        }
    }

    private static int ActiveMutant()
    {
        if (MutantFile is null)
            return -1;
        using var file = new FileStream(MutantFile, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        using var reader = new BinaryReader(file);
        return reader.ReadInt32();
    }
}
