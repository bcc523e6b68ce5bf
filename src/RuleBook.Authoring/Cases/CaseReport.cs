using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Xml;
using RuleBook.Text;

namespace RuleBook.Authoring.Cases;

/// <summary>The results of a run, for machines.</summary>
public static class CaseReport
{
    /// <summary>JSON: the number run and failed, and each case with its place, source and failures.</summary>
    public static string Json(IReadOnlyList<CaseResult> results)
    {
        return JsonText.WriteReadable(json =>
        {
            json.WriteStartObject();
            json.WriteNumber("run", results.Count);
            json.WriteNumber("failed", results.Count(result => !result.Passed));
            json.WriteNumber("edges", results.Count(result => result.Case.IsEdge));
            json.WriteNumber("open", results.Count(result => result.Case.LeavesOpen));
            json.WriteStartArray("cases");
            foreach (var result in results)
                Write(json, result);
            json.WriteEndArray();
            json.WriteEndObject();
        });
    }

    /// <summary>JUnit XML: a suite for each file, a test case for each case.</summary>
    public static string Junit(IReadOnlyList<CaseResult> results)
    {
        var text = new StringBuilder();
        using (
            var xml = XmlWriter.Create(
                text,
                new XmlWriterSettings
                {
                    Indent = true,
                    NewLineChars = "\n",
                    OmitXmlDeclaration = true,
                }
            )
        )
        {
            xml.WriteStartElement("testsuites");
            foreach (var suite in results.GroupBy(result => $"{result.Case.Jurisdiction}/{result.Case.Topic}"))
            {
                xml.WriteStartElement("testsuite");
                xml.WriteAttributeString("name", suite.Key);
                xml.WriteAttributeString("tests", Number(suite.Count()));
                xml.WriteAttributeString("failures", Number(suite.Count(result => !result.Passed)));
                foreach (var result in suite)
                    Write(xml, suite.Key, result);
                xml.WriteEndElement();
            }

            xml.WriteEndElement();
        }

        return text.Append('\n').ToString();
    }

    private static void Write(Utf8JsonWriter json, CaseResult result)
    {
        json.WriteStartObject();
        json.WriteString("case", result.Case.Id);
        json.WriteString("says", result.Case.Says);
        json.WriteString("at", result.Case.Mark.ToString());
        json.WriteString("because", result.Case.Because.ToString());
        json.WriteBoolean("edge", result.Case.IsEdge);
        json.WriteBoolean("passed", result.Passed);
        json.WriteStartArray("failures");
        foreach (var failure in result.Failures)
            json.WriteStringValue(failure);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Write(XmlWriter xml, string suite, CaseResult result)
    {
        xml.WriteStartElement("testcase");
        xml.WriteAttributeString("classname", suite);
        xml.WriteAttributeString("name", result.Case.Id);
        xml.WriteAttributeString("file", result.Case.Mark.File);
        xml.WriteAttributeString("line", Number(result.Case.Mark.Line));
        if (!result.Passed)
        {
            xml.WriteStartElement("failure");
            xml.WriteAttributeString("message", string.Join("; ", result.Failures));
            xml.WriteString($"{result.Case.Says}\n{result.Case.Because}");
            xml.WriteEndElement();
        }

        xml.WriteEndElement();
    }

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
