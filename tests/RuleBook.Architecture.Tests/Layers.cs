namespace RuleBook.Architecture.Tests;

/// <summary>
/// The wanted order of the folders of each source project, lowest first: code of a folder sees its own folder and those that stand before
/// it. <c>""</c> is the folder of the project itself.
/// </summary>
internal static class Layers
{
    public static IReadOnlyDictionary<string, string[]> Of { get; } =
        new Dictionary<string, string[]>
        {
            ["RuleBook"] =
            [
                "Text", // positions, nodes, problems, spelling, the keys of a mapping
                "Units", // quantities, dates, bounds, ranges of values
                "Physics.Masses",
                "Physics.Heights",
                "Physics.Tyres",
                "Physics.Towing",
                "Physics.Dynamics", // no rule, no job
                "Law",
                "Law.Reading", // book, rule, version, tier, scheme, source, vocabulary
                "Jobs", // the job and its plan
                "Figures", // mass, height, tyre and towing results of a job
                "Facts", // what a job makes known to the law
                "Jobs.Reading", // reading a job, and what contradicts itself in it
                "InForce", // which version holds on a day
                "Tables", // judging versions in force
                "Answers", // assessment, margins, certification, cautions
                "Telling", // every sentence
                "Telling.Sheets", // the record to sign
            ],
            ["RuleBook.Yaml"] = [""],
            ["RuleBook.Authoring"] =
            [
                "AllCores",
                "Schemas",
                "Files",
                "Books",
                "Resolved",
                "Walk",
                "Cases",
                "Checks",
                "Inspecting",
                "Packing",
                "Reports",
                "Pinning",
                "Changes",
                "Editions",
                "Records",
                "Gaps",
                "Exports",
                "Skeletons",
            ],
            ["RuleBook.Site"] =
            [
                "Templating",
                "Limits",
                "",
                "Charts",
                "Forms",
                "Views",
                "Feeds",
                "Data",
                "Comparison",
                "Pages",
                "Changes",
                "Questions",
                "Sheets",
                "Building",
            ],
            ["RuleBook.Cli"] = ["", "Answers", "Fleets", "Commands"],
        };

    /// <summary>The projects that each project sees.</summary>
    public static IReadOnlyDictionary<string, string[]> Sees { get; } =
        new Dictionary<string, string[]>
        {
            ["RuleBook"] = [],
            ["RuleBook.Yaml"] = ["RuleBook"],
            ["RuleBook.Authoring"] = ["RuleBook", "RuleBook.Yaml"],
            ["RuleBook.Site"] = ["RuleBook"],
            ["RuleBook.Cli"] = ["RuleBook", "RuleBook.Authoring", "RuleBook.Site", "RuleBook.Yaml"],
        };
}
