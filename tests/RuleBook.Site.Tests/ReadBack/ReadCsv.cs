namespace RuleBook.Site.Tests.ReadBack;

/// <summary>A reader of RFC 4180 apart from the writer.</summary>
internal static class ReadCsv
{
    public static List<List<string>> Of(string text)
    {
        var rows = new List<List<string>>();
        var (row, field, quoted) = (new List<string>(), new System.Text.StringBuilder(), false);
        for (var i = 0; i < text.Length; i++)
        {
            if (quoted && text[i] == '"' && i + 1 < text.Length && text[i + 1] == '"')
                field.Append(text[i++]);
            else if (text[i] == '"')
                quoted = !quoted;
            else if (!quoted && text[i] is ',' or '\n' && !quoted)
            {
                row.Add(field.ToString());
                field.Clear();
                if (text[i] != '\n')
                    continue;
                rows.Add(row);
                row = [];
            }
            else if (quoted || text[i] != '\r')
                field.Append(text[i]);
        }

        return rows;
    }
}
