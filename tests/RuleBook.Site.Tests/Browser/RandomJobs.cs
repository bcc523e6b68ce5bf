using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace RuleBook.Site.Tests.Browser;

/// <summary>Jobs thrown together from every kind of key, the same in every run.</summary>
internal static class RandomJobs
{
    private static readonly string[] Sizes =
    [
        "265/65R17 112S",
        "265/70R17 115S",
        "285/70R17 117S",
        "31x10.50R15LT 109S",
        "225/60R18 100H",
        "7.50R16LT 116N",
    ];

    public static IEnumerable<string> Of(int count)
    {
        var random = new Random(20261125);
        var places = TheBook.Input.Book.Jurisdictions.Where(place => place.Registers).Select(place => place.Id).ToArray();
        var categories = TheBook.Input.Book.Vocabulary.Facts["category"].Values;
        for (var i = 0; i < count; i++)
        {
            var vehicle = new JsonObject { ["category"] = Pick(random, [.. categories]), ["tyres"] = new JsonArray(Pick(random, Sizes)) };
            Maybe(random, vehicle, "four-wheel-drive", () => Pick(random, "yes", "no"));
            Maybe(random, vehicle, "stability-control", () => Pick(random, "yes", "no"));
            Maybe(random, vehicle, "first-registered", () => Pick(random, "not-yet", "2016-05-20"));
            Maybe(random, vehicle, "tare", () => $"{random.Next(1500, 2600)} kg");
            if (random.Next(3) == 0)
                vehicle["ratings"] = new JsonObject
                {
                    ["gvm"] = $"{random.Next(2400, 3500)} kg",
                    ["gcm"] = $"{random.Next(5000, 6500)} kg",
                };
            var modification = new JsonObject();
            Maybe(random, modification, "suspension-lift", () => Millimetres(random, -60, 120));
            Maybe(random, modification, "body-lift", () => Millimetres(random, 0, 60));
            Maybe(random, modification, "tyres", () => Pick(random, Sizes));
            Maybe(random, modification, "track-increase", () => Millimetres(random, 0, 60));
            if (random.Next(4) == 0)
                modification["ratings"] = new JsonObject { ["gvm"] = $"{random.Next(2800, 4600)} kg" };
            var job = new JsonObject
            {
                ["job"] = string.Create(CultureInfo.InvariantCulture, $"R-{i} \"<&>é"),
                ["registered-in"] = Pick(random, places),
                ["on"] = new DateOnly(2005, 1, 1).AddDays(random.Next(8000)).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
                ["vehicle"] = vehicle,
                ["modification"] = modification,
            };
            if (random.Next(4) == 0)
                job["certifier"] = new JsonObject { ["appointed-in"] = new JsonArray(Pick(random, places)) };
            if (random.Next(4) == 0)
                job["shown"] = new JsonObject { ["lane-change-test"] = Pick(random, "yes", "no") };
            yield return job.ToJsonString(new JsonSerializerOptions());
        }
    }

    private static void Maybe(Random random, JsonObject into, string key, Func<string> value)
    {
        if (random.Next(4) > 0)
            into[key] = value();
    }

    private static string Millimetres(Random random, int from, int to) =>
        string.Create(CultureInfo.InvariantCulture, $"{random.Next(10 * from, 10 * to) / 10m} mm");

    private static string Pick(Random random, params string[] words) => words[random.Next(words.Length)];
}
