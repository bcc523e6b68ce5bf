using System.Collections.Immutable;
using System.Globalization;
using RuleBook.Authoring.Cases;
using RuleBook.Jobs.Reading;
using RuleBook.Law;
using RuleBook.Tables;
using RuleBook.Text;
using RuleBook.Yaml;

namespace RuleBook.Authoring.Changes;

/// <summary>A saved job whose answer changes.</summary>
/// <param name="File">Its file, relative to the folder, with forward slashes.</param>
/// <param name="Job">The job's own name; null where it has none.</param>
/// <param name="Before">
/// The old answer; null when the old book cannot read the job, such as one of a jurisdiction that it does not have.
/// </param>
/// <param name="After">The new answer.</param>
public sealed record JobChange(string File, string? Job, Outcome? Before, Outcome After);

/// <summary>What two books answer to saved jobs.</summary>
/// <param name="Answered">How many jobs were answered.</param>
/// <param name="Changed">Those whose answer changes, in ordinal order of their files.</param>
/// <param name="Unreadable">What is wrong with those that cannot be read.</param>
public sealed record JobReport(int Answered, ImmutableArray<JobChange> Changed, ImmutableArray<Problem> Unreadable);

/// <summary>Answers saved jobs from two books.</summary>
public static class JobChanges
{
    private static readonly string[] Endings = [".yaml", ".yml", ".json"];

    /// <summary>All YAML and JSON files under a folder; one that cannot be read stops none of the others.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="before">The old book.</param>
    /// <param name="after">The new book.</param>
    /// <param name="today">The day of a job that gives none.</param>
    /// <exception cref="InputException">There is no such folder.</exception>
    public static JobReport In(string folder, Book before, Book after, DateOnly today)
    {
        if (folder.Trim().Length == 0 || !Directory.Exists(folder))
            throw new InputException(
                Problem.Error("no-folder", new Mark(folder, 1, 1), "there is no such folder", "name the folder of the job files")
            );
        var (answered, changed, problems) = (0, ImmutableArray.CreateBuilder<JobChange>(), new List<Problem>());
        foreach (var file in Files(folder, problems))
            try
            {
                var node = Dated(YamlText.ReadFile(Path.Combine(folder, file), file), today);
                var job = JobReader.Read(node, after);
                var (old, now) = (Old(node, before), CaseRun.Verdict(after, job));
                answered++;
                if (old != now)
                    changed.Add(new JobChange(file, job.Name, old, now));
            }
            catch (InputException refused)
            {
                problems.AddRange(refused.Problems);
            }

        return new JobReport(answered, changed.ToImmutable(), [.. problems]);
    }

    /// <summary>A folder that cannot be looked into is a problem: a job in it may change.</summary>
    private static string[] Files(string folder, List<Problem> problems)
    {
        var (files, open) = (new List<string>(), new Stack<string>([folder]));
        while (open.TryPop(out var next))
            try
            {
                files.AddRange(
                    Directory
                        .GetFiles(next)
                        .Where(file =>
                            Endings.Contains(Path.GetExtension(file), StringComparer.OrdinalIgnoreCase)
                            && new FileInfo(file).LinkTarget is null
                        )
                );
                foreach (var below in Directory.GetDirectories(next))
                    if (new DirectoryInfo(below).LinkTarget is null)
                        open.Push(below);
            }
            catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
            {
                problems.Add(
                    Problem.Error(
                        "unreadable-folder",
                        new Mark(Relative(folder, next), 1, 1),
                        $"the folder cannot be looked into: {failure.Message}",
                        "check its permissions"
                    )
                );
            }

        return [.. files.Select(file => Relative(folder, file)).Order(StringComparer.Ordinal)];
    }

    private static string Relative(string folder, string path) => Path.GetRelativePath(folder, path).Replace('\\', '/');

    private static Node Dated(Node node, DateOnly today) =>
        node is Mapping root && root.Find("on") is null && root.Find("dates") is null
            ? NodeEdit.Set(root, "on", today.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture))
            : node;

    private static Outcome? Old(Node node, Book before)
    {
        try
        {
            return CaseRun.Verdict(before, JobReader.Read(node, before));
        }
        catch (InputException)
        {
            return null;
        }
    }
}
