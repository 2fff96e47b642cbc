using System.Globalization;
using System.Text;

namespace SheetPress.Publishing;

/// <summary>An incremental update in the making: a changed catalog and new objects, then their table and a trailer.</summary>
internal sealed class PdfUpdate
{
    private readonly PdfFile _file;
    private readonly int _start;
    private readonly StringBuilder _text = new("\n");
    private readonly List<int> _offsets = [];
    private int _catalogOffset;

    /// <summary>An update to stand behind a file.</summary>
    /// <param name="file">The file.</param>
    /// <param name="fileLength">Its length in bytes.</param>
    internal PdfUpdate(PdfFile file, int fileLength)
    {
        _file = file;
        _start = fileLength;
    }

    /// <summary>A number for a new object, to be written with <see cref="Add"/>.</summary>
    internal int Reserve()
    {
        _offsets.Add(0);
        return _file.ObjectCount + _offsets.Count - 1;
    }

    /// <summary>Writes a new object, in ASCII.</summary>
    internal void Add(int number, string text) => _offsets[number - _file.ObjectCount] = Write(number, text);

    /// <summary>Writes a catalog in place of the one in the file.</summary>
    internal void ReplaceCatalog(string text) => _catalogOffset = Write(_file.Root, text);

    /// <summary>The bytes of the update.</summary>
    internal byte[] Finish()
    {
        var table = _start + _text.Length;
        _text.Append(CultureInfo.InvariantCulture, $"xref\n{_file.Root} 1\n");
        AppendEntry(_catalogOffset);
        if (_offsets.Count > 0)
        {
            _text.Append(CultureInfo.InvariantCulture, $"{_file.ObjectCount} {_offsets.Count}\n");
            foreach (var offset in _offsets)
            {
                AppendEntry(offset);
            }
        }
        _text.Append(CultureInfo.InvariantCulture, $"trailer\n<</Size {_file.ObjectCount + _offsets.Count} /Root {_file.Root} 0 R /Info {_file.Info} 0 R /Prev {_file.TableOffset}>>\n");
        _text.Append(CultureInfo.InvariantCulture, $"startxref\n{table}\n%%EOF\n");
        return Encoding.Latin1.GetBytes(_text.ToString());
    }

    private int Write(int number, string text)
    {
        var offset = _start + _text.Length;
        _text.Append(CultureInfo.InvariantCulture, $"{number} 0 obj\n{text}\nendobj\n");
        return offset;
    }

    private void AppendEntry(int offset) => _text.Append(CultureInfo.InvariantCulture, $"{offset:0000000000} 00000 n \n");
}
