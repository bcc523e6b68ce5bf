using ArchUnitNET.Domain;
using ArchUnitNET.Loader;
using Assembly = System.Reflection.Assembly;

namespace RuleBook.Architecture.Tests;

/// <summary>The compiled projects against the order in <see cref="Layers"/>: no arrow upward, hence no circle.</summary>
public sealed class LayerTests
{
    public static TheoryData<string> Projects => [.. Layers.Of.Keys];

    [Theory]
    [MemberData(nameof(Projects))]
    public void No_folder_sees_one_above_it(string project)
    {
        var order = Layers.Of[project];
        var upward =
            from type in Types(project)
            from dependency in type.Dependencies
            where IsOf(project, dependency.Target)
            let seer = Folder(project, type)
            let seen = Folder(project, dependency.Target)
            where Array.IndexOf(order, seen) > Array.IndexOf(order, seer)
            select $"{seer}: {type.Name} sees {seen}: {dependency.Target.Name}";

        upward.Distinct().Order().ShouldBeEmpty();
    }

    [Theory]
    [MemberData(nameof(Projects))]
    public void Every_folder_has_its_place_in_the_order(string project) =>
        Types(project).Select(type => Folder(project, type)).Distinct().Order().ShouldBe(Layers.Of[project].Order());

    [Theory]
    [MemberData(nameof(Projects))]
    public void No_project_sees_one_above_it(string project) =>
        Assembly
            .Load(project)
            .GetReferencedAssemblies()
            .Select(assembly => assembly.Name!)
            .Where(Layers.Of.ContainsKey)
            .Order()
            .ShouldBeSubsetOf(Layers.Sees[project]);

    private static IEnumerable<IType> Types(string project) =>
        new ArchLoader().LoadAssembly(Assembly.Load(project)).Build().Types.Where(type => IsOf(project, type));

    private static bool IsOf(string project, IType type) =>
        type.Namespace?.FullName is { } name && (name == project || name.StartsWith($"{project}.", StringComparison.Ordinal));

    private static string Folder(string project, IType type) =>
        type.Namespace.FullName == project ? "" : type.Namespace.FullName[(project.Length + 1)..];
}
