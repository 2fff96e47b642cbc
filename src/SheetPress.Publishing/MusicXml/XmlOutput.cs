using System.Globalization;
using System.Text;
using System.Xml;

namespace SheetPress.Publishing;

/// <summary>The lowest layer of the MusicXML writer: elements in order, attributes without a value left out, empty groups not written at all.</summary>
internal sealed class XmlOutput : IDisposable
{
    private readonly XmlWriter _writer;
    private readonly List<string> _unopened = [];

    public XmlOutput(Stream output)
    {
        _writer = XmlWriter.Create(output, new XmlWriterSettings
        {
            Encoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false),
            Indent = true,
            IndentChars = " ",
            NewLineChars = "\n",
            NewLineHandling = NewLineHandling.Replace,
        });
        _writer.WriteStartDocument();
    }

    /// <summary>Opens an element.</summary>
    public void Open(string name, params ReadOnlySpan<(string Name, string? Value)> attributes)
    {
        foreach (var group in _unopened) _writer.WriteStartElement(group);
        _unopened.Clear();
        _writer.WriteStartElement(name);
        foreach (var (attribute, value) in attributes)
            if (value is not null) _writer.WriteAttributeString(attribute, Clean(value));
    }

    /// <summary>Opens an element that is written only if something is written inside it.</summary>
    public void OpenGroup(string name) => _unopened.Add(name);

    /// <summary>Closes the element opened last.</summary>
    public void Close()
    {
        if (_unopened.Count > 0) _unopened.RemoveAt(_unopened.Count - 1);
        else _writer.WriteEndElement();
    }

    /// <summary>An element with text.</summary>
    public void Leaf(string name, string text, params ReadOnlySpan<(string Name, string? Value)> attributes)
    {
        Open(name, attributes);
        _writer.WriteString(Clean(text));
        Close();
    }

    /// <summary>An element with a whole number.</summary>
    public void Leaf(string name, long number, params ReadOnlySpan<(string Name, string? Value)> attributes) =>
        Leaf(name, Number(number), attributes);

    /// <summary>An element without content.</summary>
    public void Empty(string name, params ReadOnlySpan<(string Name, string? Value)> attributes)
    {
        Open(name, attributes);
        Close();
    }

    /// <summary>A whole number as text.</summary>
    public static string Number(long value) => value.ToString(CultureInfo.InvariantCulture);

    /// <summary>A decimal number as text, to a millionth, never in exponent form.</summary>
    public static string Number(double value) => value.ToString("0.######", CultureInfo.InvariantCulture);

    public void Dispose()
    {
        _writer.WriteWhitespace("\n");
        _writer.Dispose();
    }

    // XML 1.0 has no way at all to hold most control characters or half a surrogate pair; they mean nothing on a page.
    private static string Clean(string text)
    {
        for (var i = 0; i < text.Length; i++)
        {
            var size = SizeAt(text, i);
            if (size == 0) return CleanFrom(text, i);
            i += size - 1;
        }
        return text;
    }

    private static string CleanFrom(string text, int start)
    {
        var kept = new StringBuilder(text, 0, start, text.Length);
        for (var i = start; i < text.Length; i++)
        {
            var size = SizeAt(text, i);
            kept.Append(text, i, size);
            i += Math.Max(size, 1) - 1;
        }
        return kept.ToString();
    }

    // How many chars the XML character at an index takes; 0 when it is none.
    private static int SizeAt(string text, int at)
    {
        if (XmlConvert.IsXmlChar(text[at])) return 1;
        return at + 1 < text.Length && XmlConvert.IsXmlSurrogatePair(text[at + 1], text[at]) ? 2 : 0;
    }
}
