using System.Globalization;
using System.Text;

namespace SheetPress.Publishing;

/// <summary>An incremental update in the making: new and changed objects, then their table and a trailer.</summary>
internal sealed class PdfUpdate
{
    private readonly int _start;
    private readonly StringBuilder _text = new();
    private readonly SortedDictionary<int, int> _offsets = [];
    private int _nextNumber;

    /// <summary>An update that starts at the end of a file.</summary>
    /// <param name="fileLength">Bytes of the file.</param>
    /// <param name="objectCount">Objects of the file; new ones are numbered from there.</param>
    internal PdfUpdate(int fileLength, int objectCount)
    {
        _start = fileLength;
        _nextNumber = objectCount;
        _text.Append('\n');
    }

    /// <summary>A number for a new object, to be written with <see cref="Replace"/>.</summary>
    internal int Reserve() => _nextNumber++;

    /// <summary>Writes an object under a number, in place of the one in the file if there is one. ASCII only.</summary>
    internal void Replace(int number, string text)
    {
        _offsets.Add(number, _start + _text.Length);
        _text.Append(CultureInfo.InvariantCulture, $"{number} 0 obj\n{text}\nendobj\n");
    }

    /// <summary>The bytes of the update.</summary>
    internal byte[] Finish(PdfFile file)
    {
        var table = _start + _text.Length;
        _text.Append("xref\n");
        var numbers = _offsets.Keys.ToArray();
        for (var i = 0; i < numbers.Length;)
        {
            var end = i + 1;
            while (end < numbers.Length && numbers[end] == numbers[end - 1] + 1)
            {
                end++;
            }
            _text.Append(CultureInfo.InvariantCulture, $"{numbers[i]} {end - i}\n");
            for (; i < end; i++)
            {
                _text.Append(CultureInfo.InvariantCulture, $"{_offsets[numbers[i]]:0000000000} 00000 n \n");
            }
        }
        _text.Append(CultureInfo.InvariantCulture, $"trailer\n<</Size {_nextNumber} /Root {file.Root} 0 R /Info {file.Info} 0 R /Prev {file.TableOffset}>>\nstartxref\n{table}\n%%EOF\n");
        return Encoding.Latin1.GetBytes(_text.ToString());
    }
}
