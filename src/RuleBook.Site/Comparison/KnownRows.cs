using System.Collections.Concurrent;
using RuleBook.InForce;
using RuleBook.Law;
using RuleBook.Site.Views;

namespace RuleBook.Site.Comparison;

/// <summary>
/// What versions of rules and schemes answer for vehicles: kept, since most of the days on which something changes have most versions in
/// common. Safe to use from several threads.
/// </summary>
internal sealed class KnownRows(SiteBook site)
{
    private readonly ConcurrentDictionary<(string Version, string Vehicle, bool Certain), MatrixCell[]> known = [];
    private readonly ConcurrentDictionary<(string Place, string Versions, string Vehicle), SchemeAnswers> schemes = [];

    /// <summary>The cells of one version; those that open a clause in place belong to their page and are not kept.</summary>
    public MatrixCell[] Of(ComparedVehicle vehicle, ResolvedVersion version, bool certain, WhereList? where) =>
        where is null
            ? known.GetOrAdd((version.Name, vehicle.Id, certain), _ => Cells(vehicle, version, certain, null))
            : Cells(vehicle, version, certain, where);

    /// <summary>What the schemes in force in a place on a day answer.</summary>
    public SchemeAnswers Schemes(Jurisdiction place, ComparedVehicle vehicle, DateOnly day)
    {
        var all = SchemeAnswers.For(place, vehicle, day);
        var name = string.Join(' ', all.Select(each => $"{each.Scheme.Name} {each.Version.From} {each.Version.InForceBy}"));
        return schemes.GetOrAdd((place.Id, name, vehicle.Id), _ => new SchemeAnswers(site, place, all));
    }

    private MatrixCell[] Cells(ComparedVehicle vehicle, ResolvedVersion version, bool certain, WhereList? where)
    {
        var answers = new RuleAnswers(site, vehicle, version, certain, where);
        return
        [
            answers.UpTo(Pathway.NoCertificate),
            answers.UpTo(Pathway.Certificate),
            answers.UpTo(Pathway.Approval),
            answers.Beyond(),
            answers.Counts(),
            answers.Measured(),
        ];
    }
}
