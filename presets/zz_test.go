package presets_test
import ("testing";"time";"strings";"fmt";"runtime";"whorlbench/presets")
func TestZZ(t *testing.T){
 big:=file{}.String()+strings.Repeat("[[hand.piece]]\narm = \"123456/999983\"\nprop = -0.1234567890123456789\ncycles = 1.5\nbeats = 0.333333333333333\npart = [\"1/3\", 0.9999999]\npath=\"ellipse\"\nradius=[0.5,0.6]\ncentre=[0.1,0.2]\ntilt=3\narm_at=1\nprop_at=3\nlaw=\"ease-both\"\nswing=40\nswing_back=true\n",9999)
 for _,c:=range []struct{n,s string}{
  {"full",big},
  {"list8M","a=["+strings.Repeat("0,",4_000_000)+"]"},
  {"part8M",more("part=["+strings.Repeat("0,",4_000_000)+"]")},
  {"dotted","a"+strings.Repeat(".a",4_000_000)+"=1"},
  {"header","[a"+strings.Repeat(".a",4_000_000)+"]"},
  {"headers",strings.Repeat("[[a]]\n",1_300_000)},
  {"nest",strings.Repeat("a=["+strings.Repeat("[",9000)+strings.Repeat("]",9000)+"]\n",400)},
  {"nestinline",strings.Repeat("{a=",9000)},
  {"digits",one("0."+strings.Repeat("3",8_000_000))},
  {"hex",one("0x"+strings.Repeat("F",8_000_000))},
  {"newlines",strings.Repeat("\n",8_000_000)},
  {"dups","a=1\n"+strings.Repeat("a=1\n",2_000_000)},
  {"dups1line","x={a=1"+strings.Repeat(",a=1",1_600_000)+"}"},
  {"str","title=\""+strings.Repeat("\\u00e9",1_300_000)+"\""},
  {"unterminated",strings.Repeat("a=\"\\",2_000_000)},
  {"unk1line","hand=[{"+func()string{var b strings.Builder;for i:=range 800_000{fmt.Fprintf(&b,"k%d=1,",i)};return b.String()}()+"z=1}]"},
  {"longdecimals",file{}.String()+strings.Repeat("[[hand.piece]]\narm = 0."+strings.Repeat("3",3900)+"\nprop = 1\ncycles = 1\n",2000)},
  {"exps",file{}.String()+strings.Repeat("[[hand.piece]]\narm = 1e-300\nprop = 1e-300\ncycles = 1e-300\nbeats=1e-300\n",9999)},
  {"zeros",file{}.String()+strings.Repeat("[[hand.piece]]\narm = 0."+strings.Repeat("0",3000)+"1e3000\nprop = 1\ncycles = 1\n",2000)},
 }{
  t0:=time.Now()
  p,err:=presets.Decode("x",[]byte(c.s))
  d:=time.Since(t0)
  var ms runtime.MemStats; runtime.ReadMemStats(&ms)
  e:=fmt.Sprint(err); if len(e)>150{e=e[:150]}
  fmt.Println(c.n,len(c.s),d,ms.Sys>>20,"MB",e)
  if err==nil{ t0=time.Now(); o,err:=presets.Encode(p); fmt.Println(" enc",time.Since(t0),len(o),err)}
 }
}
