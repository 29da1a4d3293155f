using System.Buffers.Binary;
using System.Text;

namespace Fretloom.Pages.Fonts;

/// <summary>
/// Writes a small static TrueType font. Tables and field order: ISO/IEC 14496-22 (Open Font Format), chapters
/// 4 and 5; only the required tables, a format 12 character map and long glyph offsets. 1000 units to the em.
/// </summary>
internal static class TrueTypeWriter
{
    private const int UnitsPerEm = 1000,
        Ascent = 900,
        Descent = -250,
        SfntVersion = 0x00010000;

    /// <summary>Builds the font file.</summary>
    /// <param name="family">Family name.</param>
    /// <param name="style">Style name, such as "Regular".</param>
    /// <param name="weight">Weight class, 1 to 1000; from 600 on the font says it is bold.</param>
    /// <param name="glyphs">The characters; glyph 0, the empty .notdef, is added in front.</param>
    public static byte[] Write(string family, string style, int weight, IEnumerable<Glyph> glyphs)
    {
        var isBold = weight >= 600;
        Glyph[] all = [new(-1, 500, []), .. glyphs.OrderBy(glyph => glyph.CodePoint)];
        var points = all.SelectMany(glyph => glyph.Contours).SelectMany(contour => contour.Points).ToList();
        int xMin = points.Min(p => p.X),
            xMax = points.Max(p => p.X),
            yMin = points.Min(p => p.Y),
            yMax = points.Max(p => p.Y);

        var outlines = all.Select(Outline).ToArray();
        var loca = new BigEndian();
        var glyf = new BigEndian();
        foreach (var outline in outlines)
        {
            loca.Int32(glyf.Length);
            glyf.Bytes(outline);
        }

        loca.Int32(glyf.Length);

        var head = new BigEndian()
            .Int32(SfntVersion)
            .Int32(SfntVersion)
            .Int32(0)
            .Int32(0x5F0F3CF5)
            .Int16(0x0003)
            .Int16(UnitsPerEm)
            .Int64(0)
            .Int64(0)
            .Int16(xMin, yMin, xMax, yMax)
            .Int16(isBold ? 1 : 0)
            .Int16(8)
            .Int16(2)
            .Int16(1)
            .Int16(0);
        var hhea = new BigEndian()
            .Int32(SfntVersion)
            .Int16(Ascent, Descent, 0)
            .Int16(all.Max(g => g.Advance))
            .Int16(xMin, 0, xMax)
            .Int16(1, 0, 0)
            .Int16(0, 0, 0, 0)
            .Int16(0)
            .Int16(all.Length);
        var maxp = new BigEndian()
            .Int32(SfntVersion)
            .Int16(all.Length)
            .Int16(all.Max(g => g.Contours.Sum(c => c.Points.Count)))
            .Int16(all.Max(g => g.Contours.Count))
            .Int16(0, 0, 1, 0, 0, 0, 0, 0, 0, 0, 0);
        var hmtx = new BigEndian();
        foreach (var glyph in all)
        {
            hmtx.Int16(glyph.Advance).Int16(LeftMost(glyph));
        }

        var os2 = new BigEndian()
            .Int16(4)
            .Int16(all.Sum(g => g.Advance) / all.Length)
            .Int16(weight, 5, 0)
            .Int16(650, 600, 0, 75, 650, 600, 0, 350, 50, 300, 0)
            .Bytes(new byte[10])
            .Int32(0)
            .Int32(0)
            .Int32(0)
            .Int32(0)
            .Bytes("NONE"u8)
            .Int16(isBold ? 0x20 : 0x40)
            .Int16(0x266D, 0xFFFF)
            .Int16(Ascent, Descent, 0)
            .Int16(Ascent, -Descent)
            .Int32(0)
            .Int32(0)
            .Int16(475, 670, 0, 32, 1);

        return File([
            ("OS/2", os2),
            ("cmap", CharacterMap(all)),
            ("glyf", glyf),
            ("head", head),
            ("hhea", hhea),
            ("hmtx", hmtx),
            ("loca", loca),
            ("maxp", maxp),
            ("name", Names(family, style)),
            ("post", new BigEndian().Int32(0x00030000).Int32(0).Int16(-75, 50).Bytes(new byte[20])),
        ]);
    }

    private static int LeftMost(Glyph glyph) =>
        glyph.Contours.SelectMany(c => c.Points).Select(p => p.X).DefaultIfEmpty(0).Min();

    private static byte[] Outline(Glyph glyph)
    {
        var points = glyph.Contours.SelectMany(contour => contour.Points).ToArray();
        if (points.Length == 0)
        {
            return [];
        }

        var table = new BigEndian()
            .Int16(glyph.Contours.Count)
            .Int16(points.Min(p => p.X), points.Min(p => p.Y), points.Max(p => p.X), points.Max(p => p.Y));
        var last = -1;
        foreach (var contour in glyph.Contours)
        {
            table.Int16(last += contour.Points.Count);
        }

        table.Int16(0).Bytes([.. points.Select(p => (byte)(p.OnCurve ? 1 : 0))]);
        var before = new OutlinePoint(0, 0);
        foreach (var point in points)
        {
            table.Int16(point.X - before.X);
            before = point;
        }

        before = new OutlinePoint(0, 0);
        foreach (var point in points)
        {
            table.Int16(point.Y - before.Y);
            before = point;
        }

        return table.PaddedToFour();
    }

    private static BigEndian CharacterMap(Glyph[] glyphs)
    {
        var groups = glyphs.Length - 1;
        var table = new BigEndian()
            .Int16(0, 1)
            .Int16(3, 10)
            .Int32(12)
            .Int16(12, 0)
            .Int32(16 + (12 * groups))
            .Int32(0)
            .Int32(groups);
        for (var id = 1; id < glyphs.Length; id++)
        {
            table.Int32(glyphs[id].CodePoint).Int32(glyphs[id].CodePoint).Int32(id);
        }

        return table;
    }

    private static BigEndian Names(string family, string style)
    {
        var fullName = $"{family} {style}";
        (int Id, string Text)[] names =
        [
            (1, family),
            (2, style),
            (3, fullName),
            (4, fullName),
            (5, "Version 1.000"),
            (6, fullName.Replace(' ', '-')),
        ];
        var records = new BigEndian().Int16(0, names.Length, 6 + (12 * names.Length));
        var texts = new BigEndian();
        foreach (var (id, text) in names)
        {
            var bytes = Encoding.BigEndianUnicode.GetBytes(text);
            records.Int16(3, 1, 0x409, id, bytes.Length, texts.Length);
            texts.Bytes(bytes);
        }

        return records.Bytes(texts.ToArray());
    }

    private static byte[] File((string Tag, BigEndian Table)[] tables)
    {
        var power = (int)Math.Log2(tables.Length);
        var searchRange = 16 << power;
        var header = new BigEndian()
            .Int32(SfntVersion)
            .Int16(tables.Length, searchRange, power, (16 * tables.Length) - searchRange);
        var body = new BigEndian();
        var headAt = 0;
        foreach (var (tag, table) in tables)
        {
            var offset = 12 + (16 * tables.Length) + body.Length;
            headAt = tag == "head" ? offset : headAt;
            var padded = table.PaddedToFour();
            header.Bytes(Encoding.ASCII.GetBytes(tag)).Int32((int)Checksum(padded)).Int32(offset).Int32(table.Length);
            body.Bytes(padded);
        }

        var file = header.Bytes(body.ToArray()).ToArray();
        BinaryPrimitives.WriteUInt32BigEndian(file.AsSpan(headAt + 8), unchecked(0xB1B0AFBA - Checksum(file)));
        return file;
    }

    private static uint Checksum(ReadOnlySpan<byte> padded)
    {
        var sum = 0u;
        for (var i = 0; i < padded.Length; i += 4)
        {
            sum = unchecked(sum + BinaryPrimitives.ReadUInt32BigEndian(padded[i..]));
        }

        return sum;
    }
}
