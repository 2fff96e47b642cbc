using System.Xml;
using System.Xml.Linq;
using System.Xml.Schema;

namespace SheetPress.Publishing.Tests.MusicXml;

/// <summary>
/// The MusicXML 4.0 schema (W3C Music Notation Community Group), read from the folder beside the repository or the one that
/// MUSICXML_SCHEMA_DIR names. Tests that need it are skipped where it is missing, but fail on a machine that checks changes (CI=true).
/// </summary>
internal static class MusicXmlSchema
{
    private static readonly Lazy<XmlSchemaSet?> Loaded = new(Load);

    /// <summary>Fails the test with the errors of the schema, if there are any.</summary>
    public static void Validate(XDocument document, string name) => ErrorsOf(document).ShouldBeEmpty(name);

    /// <summary>What the schema has against a document.</summary>
    public static List<string> ErrorsOf(XDocument document)
    {
        var schema = Loaded.Value;
        if (schema is null)
        {
            const string reason = "The MusicXML schema is not here: put it into ../shared/standards/musicxml-4.0 or name its folder in MUSICXML_SCHEMA_DIR.";
            if (Environment.GetEnvironmentVariable("CI") == "true") Assert.Fail(reason);
            Assert.Skip(reason);
        }
        var errors = new List<string>();
        document.Validate(schema, (sender, e) => errors.Add($"{(sender as XObject)?.Parent?.Name} {sender}: {e.Message}"));
        return errors;
    }

    private static XmlSchemaSet? Load()
    {
        var folder = Folder();
        if (folder is null) return null;
        // The schema imports its companions by web address; they lie beside it, and nothing is fetched.
        var set = new XmlSchemaSet { XmlResolver = new LocalResolver(folder) };
        var settings = new XmlReaderSettings { DtdProcessing = DtdProcessing.Ignore, XmlResolver = new LocalResolver(folder) };
        using var reader = XmlReader.Create(Path.Combine(folder, "musicxml.xsd"), settings);
        set.Add(null, reader);
        set.Compile();
        return set;
    }

    private static string? Folder()
    {
        var root = new DirectoryInfo(AppContext.BaseDirectory);
        while (root is not null && !File.Exists(Path.Combine(root.FullName, "SheetPress.sln"))) root = root.Parent;
        var beside = root is null ? null : Path.Combine(root.FullName, "..", "shared", "standards", "musicxml-4.0");
        foreach (var folder in new[] { beside, Environment.GetEnvironmentVariable("MUSICXML_SCHEMA_DIR") })
            if (folder is not null && File.Exists(Path.Combine(folder, "musicxml.xsd"))) return folder;
        return null;
    }

    private sealed class LocalResolver(string folder) : XmlUrlResolver
    {
        public override object? GetEntity(Uri absoluteUri, string? role, Type? ofObjectToReturn)
        {
            var file = Path.Combine(folder, Path.GetFileName(absoluteUri.LocalPath));
            // The schema of xml.xsd names a document type that is not needed to read it.
            return File.Exists(file) ? File.OpenRead(file) : new MemoryStream();
        }
    }
}
