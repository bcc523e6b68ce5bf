namespace RuleBook.Answers;

/// <summary>A part of an answer that is worked out when it is first read; by two threads at once perhaps twice, to the same end.</summary>
internal sealed class Later<T>
{
    private Func<T>? work;
    private T value = default!;

    /// <summary>Worked out by <paramref name="work"/>.</summary>
    public Later(Func<T> work) => this.work = work;

    private Later(T value) => this.value = value;

    public T Value
    {
        get
        {
            if (Volatile.Read(ref work) is not { } still)
                return value;
            value = still();
            Volatile.Write(ref work, null);
            return value;
        }
    }

    /// <summary>A part that is known already.</summary>
    public static implicit operator Later<T>(T value) => new(value);
}
